"""Colour bars: white, yellow, cyan, green, magenta, red, blue, black, of falling luminance.

Bars are named by four levels in percent: of white, of black, and the largest and the smallest
that a colour has in a coloured bar (ITU-R BT.471). 75/7.5/75/7.5 are usual at 525 lines (SMPTE
EG 1, EIA-189-A), 100/0/75/0 at 625 (EBU D 23; common practice). Both have colours of 75 %; they
differ in the white bar.
"""

from collections.abc import Callable
from functools import lru_cache
from typing import NamedTuple

import numpy as np

from exercises.signal.arrays import Picture, Size
from exercises.signal.lines import Lines

LUMA = (0.299, 0.587, 0.114)  # of red, green, blue (ITU-R BT.601)


class Bar(NamedTuple):
    """Red, green and blue from 0 to 1."""

    name: str
    red: float
    green: float
    blue: float

    @property
    def luma(self) -> float:
        return LUMA[0] * self.red + LUMA[1] * self.green + LUMA[2] * self.blue

    def ire(self, lines: Lines) -> float:
        """Its luminance level.

        >>> round(BARS["bars"][1].ire(Lines.L525), 1), round(BARS["bars"][1].ire(Lines.L625), 1)
        (69.0, 66.5)
        """
        return lines.level(self.luma)

    @property
    def triple(self) -> tuple[int, int, int]:
        """Y, Cb, Cr in 8 bits (ITU-R BT.601).

        >>> BARS["bars"][1].triple
        (162, 44, 142)
        """
        luma = self.luma
        blue = (self.blue - luma) / (2 - 2 * LUMA[2])
        red = (self.red - luma) / (2 - 2 * LUMA[0])
        return round(16 + 219 * luma), round(128 + 224 * blue), round(128 + 224 * red)


def _with_white(level: float) -> tuple[Bar, ...]:
    return (
        Bar("white", level, level, level),
        Bar("yellow", 0.75, 0.75, 0),
        Bar("cyan", 0, 0.75, 0.75),
        Bar("green", 0, 0.75, 0),
        Bar("magenta", 0.75, 0, 0.75),
        Bar("red", 0.75, 0, 0),
        Bar("blue", 0, 0, 0.75),
        Bar("black", 0, 0, 0),
    )


# By the name of the pattern.
BARS = {"bars": _with_white(0.75), "bars-100": _with_white(1)}
USUAL = {Lines.L525: "bars", Lines.L625: "bars-100"}


def numbers(name: str, lines: Lines) -> str:
    """What a card calls them: white, black, the largest and the smallest of a colour.

    >>> numbers("bars", Lines.L525), numbers("bars-100", Lines.L625)
    ('75/7.5/75/7.5', '100/0/75/0')
    """
    white, *coloured, _ = BARS[name]
    most = max(max(bar[1:]) for bar in coloured)
    return f"{100 * white.luma:.0f}/{lines.setup:g}/{100 * most:.0f}/{lines.setup:g}"


def white_bar(name: str, lines: Lines) -> float:
    """IRE at which the white bar belongs.

    >>> round(white_bar("bars", Lines.L525), 1), round(white_bar("bars-100", Lines.L625), 1)
    (76.9, 100.0)
    """
    return BARS[name][0].ire(lines)


@lru_cache(maxsize=8)
def _drawn(name: str, size: Size) -> Picture:
    bars = BARS[name]
    inks = np.array([[round(255 * band) for band in bar[1:]] for bar in bars], np.uint8)
    which = np.arange(size[0]) * len(bars) // size[0]
    return np.repeat(inks[which][None], size[1], axis=0)


def pattern(name: str) -> Callable[[int, Size], Picture]:
    """Frames of the bars of that name: they don't move."""
    return lambda n, size: _drawn(name, size).copy()
