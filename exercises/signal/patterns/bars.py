"""Colour bars, 75 %: white, yellow, cyan, green, magenta, red, blue, black.

EIA-189-A, SMPTE EG 1 and ITU-R BT.471 have them in this order, of falling luminance.
"""

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

        >>> round(BARS[0].ire(Lines.L525), 1), round(BARS[0].ire(Lines.L625), 1)
        (76.9, 75.0)
        """
        return lines.level(self.luma)

    @property
    def triple(self) -> tuple[int, int, int]:
        """Y, Cb, Cr in 8 bits (ITU-R BT.601).

        >>> BARS[1].triple
        (162, 44, 142)
        """
        luma = self.luma
        blue = (self.blue - luma) / (2 - 2 * LUMA[2])
        red = (self.red - luma) / (2 - 2 * LUMA[0])
        return round(16 + 219 * luma), round(128 + 224 * blue), round(128 + 224 * red)


BARS = (
    Bar("white", 0.75, 0.75, 0.75),
    Bar("yellow", 0.75, 0.75, 0),
    Bar("cyan", 0, 0.75, 0.75),
    Bar("green", 0, 0.75, 0),
    Bar("magenta", 0.75, 0, 0.75),
    Bar("red", 0.75, 0, 0),
    Bar("blue", 0, 0, 0.75),
    Bar("black", 0, 0, 0),
)


@lru_cache(maxsize=8)
def _bars(size: Size) -> Picture:
    inks = np.array([[round(255 * band) for band in bar[1:]] for bar in BARS], np.uint8)
    which = np.arange(size[0]) * len(BARS) // size[0]
    return np.repeat(inks[which][None], size[1], axis=0)


def picture(n: int, size: Size) -> Picture:
    """They don't move."""
    return _bars(size).copy()
