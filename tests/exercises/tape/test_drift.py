from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from exercises.tape import Drift, Player, Rate
from exercises.tape.drift import Adjustment, adjustments


def test_steady_player_stays_as_it_is() -> None:
    assert adjustments(Player(-20, 7), 10_000, Rate.R25) == (Adjustment(0, -20, 7),)


def test_drift_is_always_the_same_from_its_seed() -> None:
    player = Player(10, -5, Drift(3, tracking=8, skew=4))

    assert adjustments(player, 101, Rate.R25) == (
        Adjustment(0, 10, -5),
        Adjustment(25, 6, -5),
        Adjustment(50, 4, -4),
        Adjustment(75, 6, -7),
        Adjustment(100, -2, -5),
    )


@given(st.integers(0, 10**9), st.integers(0, 100), st.integers(0, 100), st.integers(-100, 100))
def test_each_second_moves_by_no_more_than_its_step(
    seed: int, tracking: int, skew: int, start: int
) -> None:
    player = Player(start, -start, Drift(seed, tracking, skew))

    held = adjustments(player, 600, Rate.R29_97)

    assert held[0] == Adjustment(0, start, -start)
    assert [each.frame for each in held] == list(range(0, 600, 30))
    for before, after in pairwise(held):
        assert abs(after.tracking - before.tracking) <= tracking + 1
        assert abs(after.skew - before.skew) <= skew + 1


def test_longer_recording_drifts_alike_as_far_as_it_goes() -> None:
    player = Player(drift=Drift(3, tracking=8))

    assert adjustments(player, 900, Rate.R25)[:4] == adjustments(player, 100, Rate.R25)


def test_reel_moves_tracking_steadily_by_so_much_in_ten_minutes() -> None:
    player = Player(4, 0, Drift(1, reel=-30))

    held = adjustments(player, 1200 * 25, Rate.R25)

    assert [held[second].tracking for second in (0, 60, 300, 600, 1199)] == [4, 1, -11, -26, -56]
    assert {each.skew for each in held} == {0}
