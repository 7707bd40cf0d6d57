"""Tape speeds and tracking, against figures of IEC 60712 and IEC 60774-1 and their geometry."""

from math import log10

import pytest

from exercises.tape import Rate
from exercises.tape.geometry import TapeSpeed, envelope_loss


@pytest.mark.parametrize(
    ("speed", "rate", "metres"),
    [
        (TapeSpeed.IEC_60712, Rate.R29_97, 5.718),
        (TapeSpeed.IEC_60712, Rate.R25, 5.718),
        (TapeSpeed.IEC_60774_1, Rate.R29_97, 2.001),
        (TapeSpeed.IEC_60774_1, Rate.R25, 1.4034),
    ],
)
def test_tape_used_in_a_minute(speed: TapeSpeed, rate: Rate, metres: float) -> None:
    """Millimetres a second times 60: 23.39 (IEC 60774-1); 33.35 (IEC 60774-1) and 95.3 (IEC
    60712) from memory.
    """
    frames = round(60 * rate.fraction)

    assert float(speed.used(frames, rate)) / 1000 == pytest.approx(metres, rel=0.0005)


@pytest.mark.parametrize(
    ("speed", "rate", "millimetres"),
    [
        (TapeSpeed.IEC_60774_1, Rate.R29_97, 1.1128),
        (TapeSpeed.IEC_60774_1, Rate.R25, 0.9356),
        (TapeSpeed.IEC_60712, Rate.R29_97, 3.180),
        (TapeSpeed.IEC_60712, Rate.R25, 3.812),
    ],
)
def test_tape_used_by_a_frame(speed: TapeSpeed, rate: Rate, millimetres: float) -> None:
    """Two tracks a frame, one turn of the drum: speed divided by the picture rate. The speeds of
    IEC 60712 and, at 525 lines, of IEC 60774-1 are from memory.
    """
    assert float(speed.used(1, rate)) == pytest.approx(millimetres, abs=0.0005)


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
