from hypothesis import given
from hypothesis import strategies as st

from exercises.tape.geometry import LOST, envelope_loss


@given(st.integers(0, 99))
def test_loss_grows_with_the_error_alike_on_both_sides(tracking: int) -> None:
    assert envelope_loss(tracking) == envelope_loss(-tracking)
    assert envelope_loss(tracking) < envelope_loss(tracking + 1)


def test_nothing_is_left_a_track_away() -> None:
    assert [envelope_loss(tracking) for tracking in (0, 100, -100, 130)] == [0, LOST, LOST, LOST]
