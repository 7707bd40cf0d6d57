"""Colour bars against published levels and colour-science's ITU-R BT.601."""

import warnings

import numpy as np
import pytest

from exercises.signal.footage import frame
from exercises.signal.lines import Lines
from exercises.signal.patterns import BARS
from exercises.signal.patterns.bars import USUAL, numbers, white_bar

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # it misses its plotting library, which isn't needed
    import colour

# 75/7.5/75/7.5 of EIA-189-A and SMPTE EG 1: 7.5 + 92.5 Y' IRE, Y' = 0.299 R + 0.587 G + 0.114 B.
IRE_525 = [76.9, 69.0, 56.1, 48.2, 36.2, 28.2, 15.4, 7.5]
# 75/0/75/0 of ITU-R BT.471: 700 Y' mV.
MILLIVOLTS_625 = [525.0, 465.1, 368.0, 308.2, 216.8, 157.0, 59.9, 0.0]
# 100/0/75/0, EBU D 23: the same with a white bar of 1.00, which is 700 mV (ITU-R BT.1700).
MILLIVOLTS_625_WHITE = [700.0, *MILLIVOLTS_625[1:]]

# The worked example of the first: three quarters of 92.5 IRE over a setup of 7.5.
WHITE_BY_HAND = 7.5 + 0.75 * (100 - 7.5)

# ITU-R BT.471 orders the four: white, black, largest and smallest colour component. Which are
# usual: SMPTE EG 1 at 525 lines, common practice at 625.
NAMED = {
    ("bars", Lines.L525): "75/7.5/75/7.5",
    ("bars", Lines.L625): "75/0/75/0",
    ("bars-100", Lines.L625): "100/0/75/0",
}


def test_levels_are_as_published_at_525_lines() -> None:
    """EIA-189-A and SMPTE EG 1, 75/7.5/75/7.5: 7.5 + 92.5 Y' IRE, with Y' of ITU-R BT.601."""
    assert [bar.ire(Lines.L525) for bar in BARS["bars"]] == pytest.approx(IRE_525, abs=0.1)
    assert white_bar("bars", Lines.L525) == pytest.approx(WHITE_BY_HAND)


@pytest.mark.parametrize(
    ("name", "millivolts"), [("bars", MILLIVOLTS_625), ("bars-100", MILLIVOLTS_625_WHITE)]
)
def test_levels_are_as_published_at_625_lines(name: str, millivolts: list[float]) -> None:
    """ITU-R BT.471, 75/0/75/0: 700 Y' mV; EBU D 23, 100/0/75/0: a white bar of 700 mV."""
    ours = [bar.ire(Lines.L625) * Lines.L625.millivolts for bar in BARS[name]]

    assert ours == pytest.approx(millivolts, abs=0.1)


@pytest.mark.parametrize(("bars", "told"), NAMED.items())
def test_bars_are_named_by_four_levels(bars: tuple[str, Lines], told: str) -> None:
    """ITU-R BT.471 orders the four: white, black, largest and smallest colour component."""
    assert numbers(*bars) == told


def test_usual_bars_are_those_of_their_lines() -> None:
    """SMPTE EG 1 at 525 lines; common practice at 625."""
    assert {lines: numbers(name, lines) for lines, name in USUAL.items()} == {
        Lines.L525: "75/7.5/75/7.5",
        Lines.L625: "100/0/75/0",
    }


@pytest.mark.parametrize("name", BARS)
@pytest.mark.parametrize("lines", Lines)
def test_levels_as_drawn_are_those_of_colour_science(lines: Lines, name: str) -> None:
    """colour-science's luma of ITU-R BT.601."""
    drawn = frame(name, 0)[240, 40::80].astype(float) / 255
    luma = colour.RGB_to_YCbCr(drawn, K=colour.WEIGHTS_YCBCR["ITU-R BT.601"], out_legal=False)[:, 0]

    assert [lines.level(shade) for shade in luma] == pytest.approx(
        [bar.ire(lines) for bar in BARS[name]], abs=0.1
    )


@pytest.mark.parametrize("name", BARS)
def test_triples_are_those_of_colour_science(name: str) -> None:
    """colour-science's codes of ITU-R BT.601."""
    triples = colour.RGB_to_YCbCr(
        np.array([[bar.red, bar.green, bar.blue] for bar in BARS[name]]),
        K=colour.WEIGHTS_YCBCR["ITU-R BT.601"],
        out_legal=True,
        out_bits=8,
        out_int=True,
    )

    assert [bar.triple for bar in BARS[name]] == [
        tuple(int(code) for code in row) for row in triples
    ]
