"""Full marks inside the band, none from three times as far off."""

import pytest

from exercises.drills.kinds.knobs.aim import Aim

AIM = Aim(values=tuple(range(-40, 41)), aim=0, band=10)


@pytest.mark.parametrize(
    ("off", "right", "score"),
    [(0, True, 100), (10, True, 100), (11, False, 95), (20, False, 50), (29, False, 5)],
)
def test_score_falls_with_the_distance(off: int, right: bool, score: int) -> None:
    for position in (40 + off, 40 - off):
        assert (AIM.is_right(position), AIM.score(position)) == (right, score)


@pytest.mark.parametrize("off", [30, 40])
def test_score_is_nothing_at_three_times_the_band(off: int) -> None:
    assert AIM.score(40 + off) == 0


def test_best_position_is_the_one_nearest_to_the_aim() -> None:
    assert Aim(values=(-7, 4, 9), aim=2, band=1).best == 1


def test_aim_survives_being_kept() -> None:
    assert Aim.from_json(AIM.as_json()) == AIM
