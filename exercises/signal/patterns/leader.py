"""A countdown before the film: a number a second, and a hand that goes round with it."""

from functools import lru_cache
from math import cos, pi, sin

import numpy as np

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.scenes.canvas import finished, lay, plain, vignette
from exercises.signal.scenes.lettering import lettered
from exercises.signal.scenes.shapes import Pen, cover

SECONDS = 10
LAST = 3  # the number after which it is black up to the film (common practice)


def picture(n: int, size: Size, rate: int = 30) -> Picture:
    """Counts from 10 down to 3; then black, and black it stays."""
    number = SECONDS - n // rate
    if number < LAST:
        return np.zeros((size[1], size[0], 3), np.uint8)
    shown = _dial(size, number).copy()
    hand = _hand(size, (n % rate) / rate)[..., None]
    return (shown + (230.0 - shown) * hand).astype(np.uint8)


@lru_cache(maxsize=3)
def _dial(size: Size, number: int) -> Picture:
    canvas = plain(size, (0.22, 0.24, 0.26))
    lay(canvas, (0.50, 0.52, 0.54), cover(size, _ticks))
    lay(canvas, (0.92, 0.91, 0.86), lettered(size, str(number), (320, 246), 170))
    vignette(canvas, 0.4)
    return finished(canvas)


def _ticks(pen: Pen) -> None:
    pen.ring((320, 240), 196, 255, 2.5)
    for tick in range(60):
        angle = 2 * pi * tick / 60
        inner = 176 if tick % 5 == 0 else 186
        ends = [(320 + r * sin(angle), 240 - r * cos(angle)) for r in (inner, 196)]
        pen.line(ends, 255, 3 if tick % 5 == 0 else 1.2)


def _hand(size: Size, part: float) -> Plane:
    angle = 2 * pi * part
    ends = [(320 + r * sin(angle), 240 - r * cos(angle)) for r in (128, 190)]
    return cover(size, lambda pen: pen.line(ends, 255, 6))
