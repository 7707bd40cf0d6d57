from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from exercises.tape import Rate
from exercises.tape.geometry import LOST, TapeSpeed, envelope_loss


@given(st.integers(0, 99))
def test_loss_grows_with_the_error_alike_on_both_sides(tracking: int) -> None:
    assert envelope_loss(tracking) == envelope_loss(-tracking)
    assert envelope_loss(tracking) < envelope_loss(tracking + 1)


def test_nothing_is_left_a_track_away() -> None:
    assert [envelope_loss(tracking) for tracking in (0, 100, -100, 130)] == [0, LOST, LOST, LOST]


def test_tape_used_is_exact() -> None:
    speed = TapeSpeed.IEC_60712

    assert speed.used(30_000, Rate.R29_97) == Fraction(9530 * 1001, 100)
    assert speed.used(0, Rate.R25) == 0
    assert speed.used(25, Rate.R25) == Fraction("95.3")
