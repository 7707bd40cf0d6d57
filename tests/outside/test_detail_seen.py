"""Detail through copies, measured on gratings by the amplitude that is left of each."""

import numpy as np
import pytest

from exercises.signal.arrays import Picture
from exercises.signal.lines import Lines
from exercises.signal.patterns.bars import LUMA
from exercises.signal.picture import Look, rendered

ONE_COPY = 3.0  # MHz: 240 lines, common practice for half-inch cassettes
LEFT = {1: 1.0, 2: 0.707, 3: 0.577, 4: 0.5}
FREQUENCIES = np.arange(0.3, 5.0, 0.05)


def grating(megahertz: float) -> Picture:
    microseconds = np.arange(640) * Lines.L525.active / 640
    line = 128 + 80 * np.sin(2 * np.pi * megahertz * microseconds)
    return np.repeat(np.repeat(np.rint(line).astype(np.uint8)[None, :, None], 16, 0), 3, 2)


def left(megahertz: float, copies: int) -> float:
    clean = grating(megahertz)
    soft = rendered(clean, Look(copies=copies), 0)
    amplitudes = [(each @ np.array(LUMA))[:, 40:-40].std() for each in (soft, clean)]
    return float(amplitudes[0] / amplitudes[1])


def bandwidth(copies: int) -> float:
    """MHz at which 3 dB are lost."""
    amplitudes = [left(float(each), copies) for each in FREQUENCIES]
    return float(np.interp(-(0.5**0.5), [-each for each in amplitudes], FREQUENCIES))


@pytest.mark.parametrize("copies", LEFT)
def test_bandwidth_after_copies(copies: int) -> None:
    """Derived here: rise times of Gaussian stages add as squares, so n alike leave 1/√n of the
    bandwidth. That one copy has 3 MHz (240 lines) is common practice for half-inch cassettes.
    """
    assert bandwidth(copies) == pytest.approx(ONE_COPY * LEFT[copies], rel=0.12)
