"""A test grid: upright and level lines, to see by how far something is bent."""

from functools import lru_cache

import numpy as np

from exercises.signal.arrays import Picture, Size
from exercises.signal.scenes.canvas import finished, lay, plain
from exercises.signal.scenes.lettering import lettered
from exercises.signal.scenes.shapes import Pen, box, cover

STEP = 40


def picture(n: int, size: Size) -> Picture:
    """It doesn't move."""
    return _grid(size).copy()


@lru_cache(maxsize=8)
def _grid(size: Size) -> Picture:
    canvas = plain(size, (0.20, 0.20, 0.20))
    lay(canvas, (0.30, 0.30, 0.30), cover(size, _squares))
    lay(canvas, (0.82, 0.82, 0.82), cover(size, _lines))
    lay(canvas, (0.16, 0.16, 0.16), cover(size, box(242, 222, 398, 258)))
    lay(canvas, (0.82, 0.82, 0.82), lettered(size, "GRID", (320, 240), 24, spread=8))
    return finished(canvas)


def _squares(pen: Pen) -> None:
    for column in range(0, 640, 2 * STEP):
        for row in range(0, 480, STEP):
            left = column + (row // STEP % 2) * STEP
            pen.box(left, row, left + STEP, row + STEP, 255)


def _lines(pen: Pen) -> None:
    for x in np.arange(STEP, 640, STEP):
        pen.box(float(x) - 1, 0, float(x) + 1, 480, 255)
    for y in np.arange(STEP, 480, STEP):
        pen.box(0, float(y) - 1, 640, float(y) + 1, 255)
    pen.ring((320, 240), 200, 255, 2)
