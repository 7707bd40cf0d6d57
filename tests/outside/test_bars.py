"""Colour bars against published levels and colour-science's ITU-R BT.601."""

import warnings

import numpy as np
import pytest

from exercises.signal.footage import frame
from exercises.signal.lines import Lines
from exercises.signal.patterns import BARS

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # it misses its plotting library, which isn't needed
    import colour

# 75 % bars of EIA-189-A, SMPTE EG 1 and ITU-R BT.471: 7.5 + 92.5 Y' IRE at 525 lines with
# setup, 700 Y' mV at 625, Y' = 0.299 R + 0.587 G + 0.114 B.
IRE_525 = [76.9, 69.0, 56.1, 48.2, 36.2, 28.2, 15.4, 7.5]
MILLIVOLTS_625 = [525.0, 465.1, 368.0, 308.2, 216.8, 157.0, 59.9, 0.0]

# The worked example of the same: three quarters of 92.5 IRE over a setup of 7.5.
WHITE_BY_HAND = 7.5 + 0.75 * (100 - 7.5)


def test_levels_are_as_published_at_525_lines() -> None:
    assert [bar.ire(Lines.L525) for bar in BARS] == pytest.approx(IRE_525, abs=0.1)
    assert BARS[0].ire(Lines.L525) == pytest.approx(WHITE_BY_HAND)


def test_levels_are_as_published_at_625_lines() -> None:
    millivolts = [bar.ire(Lines.L625) * Lines.L625.millivolts for bar in BARS]

    assert millivolts == pytest.approx(MILLIVOLTS_625, abs=0.1)


@pytest.mark.parametrize("lines", Lines)
def test_levels_as_drawn_are_those_of_colour_science(lines: Lines) -> None:
    drawn = frame("bars", 0)[240, 40::80].astype(float) / 255
    luma = colour.RGB_to_YCbCr(drawn, K=colour.WEIGHTS_YCBCR["ITU-R BT.601"], out_legal=False)[:, 0]

    assert [lines.level(shade) for shade in luma] == pytest.approx(
        [bar.ire(lines) for bar in BARS], abs=0.1
    )


def test_triples_are_those_of_colour_science() -> None:
    triples = colour.RGB_to_YCbCr(
        np.array([[bar.red, bar.green, bar.blue] for bar in BARS]),
        K=colour.WEIGHTS_YCBCR["ITU-R BT.601"],
        out_legal=True,
        out_bits=8,
        out_int=True,
    )

    assert [bar.triple for bar in BARS] == [tuple(int(code) for code in row) for row in triples]
