"""The needle of the VU meter against IEC 60268-17 (and ANSI C16.5-1942, which it follows)."""

import numpy as np
import pytest

from exercises.signal.meters.scale import END
from exercises.signal.meters.vu import deflections, peak
from exercises.signal.sound.samples import LINE_UP, RATE
from tests.waves import tone


def test_step_reaches_99_percent_at_300_ms() -> None:
    """IEC 60268-17: 99 % of its final deflection in 300 ms, give or take 10 %."""
    moved = deflections(tone(0, seconds=1))

    reached = np.argmax(moved >= 0.99) / RATE

    assert reached == pytest.approx(0.3, abs=0.03)


def test_step_overshoots_by_1_to_1_5_percent() -> None:
    """IEC 60268-17; a meter of one pole has no overshoot and fails this."""
    moved = deflections(tone(0, seconds=2))

    assert 1.01 <= moved.max() <= 1.015


def test_fall_takes_as_long_as_the_rise() -> None:
    """IEC 60268-17: the same on the way down."""
    moved = deflections(np.concatenate((tone(0, seconds=2), np.zeros(RATE, np.float32))))

    fallen = np.argmax(moved[2 * RATE :] <= 0.01) / RATE

    assert fallen == pytest.approx(0.3, abs=0.03)


@pytest.mark.parametrize(
    ("milliseconds", "reads"),
    [(10, -24.9), (25, -17.0), (50, -11.1), (100, -5.57), (150, -2.8), (200, -1.28), (300, -0.08)],
)
def test_burst_reads_what_a_needle_of_second_order_does(milliseconds: int, reads: float) -> None:
    """Derived from IEC 60268-17: a second-order system with 1.25 % of overshoot."""
    burst = np.concatenate((tone(0, seconds=milliseconds / 1000), np.zeros(RATE, np.float32)))

    assert peak(burst) / 10 == pytest.approx(reads, abs=0.1)


def test_meter_shows_the_average_not_the_root_mean_square() -> None:
    """IEC 60268-17: a square wave and a sine of one average read alike; their rms differ by 0.91
    dB (derived here: the form factor of a sine is pi / (2 sqrt 2)).
    """
    high = LINE_UP * 2 / np.pi
    square = np.where(np.arange(2 * RATE) // 40 % 2, high, -high).astype(np.float32)

    assert deflections(square)[-1] == pytest.approx(1, abs=0.03)


def test_0_vu_stands_at_71_percent_of_the_scale() -> None:
    """IEC 60268-17 and ANSI C16.5: the scale ends at +3, where the voltage is 1.41 times."""
    assert pytest.approx(0.71, abs=0.005) == 1 / END
