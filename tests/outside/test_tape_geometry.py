"""Tracking, against the geometry of a head as wide as its track."""

from math import log10

import pytest

from exercises.tape.geometry import envelope_loss


@pytest.mark.parametrize(
    ("tracking", "loss"),
    [(0, 0), (10, 0.92), (25, 2.5), (50, 6.02), (75, 12.04), (90, 20)],
)
def test_signal_lost_off_the_middle_of_the_track(tracking: int, loss: float) -> None:
    """From memory: a head as wide as its track, whose signal falls in a straight line on either
    side.
    """
    for side in (tracking, -tracking):
        assert envelope_loss(side) / 10 == pytest.approx(loss, abs=0.005)
    assert envelope_loss(tracking) / 10 == pytest.approx(-20 * log10(1 - tracking / 100))
