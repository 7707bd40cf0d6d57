"""Test patterns: bars, black, a countdown, a grid."""

from collections.abc import Callable

import numpy as np

from exercises.signal.arrays import Picture, Size
from exercises.signal.patterns import bars, grid, leader
from exercises.signal.patterns.bars import BARS, Bar

__all__ = ["BARS", "PATTERNS", "Bar"]


def _black(n: int, size: Size) -> Picture:
    return np.zeros((size[1], size[0], 3), np.uint8)


PATTERNS: dict[str, Callable[[int, Size], Picture]] = {
    **{name: bars.pattern(name) for name in BARS},
    "black": _black,
    "leader": leader.picture,
    "grid": grid.picture,
}
