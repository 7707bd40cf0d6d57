"""The title card."""

from functools import lru_cache

import numpy as np

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.scenes.canvas import finished, glow, lay, over, shine, tint, upright, vignette
from exercises.signal.scenes.lettering import lettered
from exercises.signal.scenes.shapes import Pen, box, cover
from exercises.signal.scenes.water import Water

HORIZON = 300.0
IVORY = (0.93, 0.89, 0.78)


def picture(n: int, size: Size) -> Picture:
    shown = _night(size).copy()
    _water(size).fill(shown, n)
    return over(shown, tint(IVORY) * 255, _letters(size))


@lru_cache(maxsize=2)
def _water(size: Size) -> Water:
    return Water(
        size,
        HORIZON,
        height=2.4,
        depth=(0.03, 0.05, 0.08),
        clear=0.7,
        swell=1.2,
        sparkle=(322, 30, (0.50, 0.46, 0.34)),
    )


@lru_cache(maxsize=2)
def _night(size: Size) -> Picture:
    canvas = upright(
        size, ((0, (0.04, 0.06, 0.11)), (220, (0.09, 0.12, 0.18)), (300, (0.17, 0.19, 0.23)))
    )
    shine(canvas, (0.20, 0.17, 0.10), glow(size, (322, 262), 60))
    lay(canvas, (0.92, 0.88, 0.72), cover(size, lambda pen: pen.disc((322, 262), 17, 255)))
    lay(canvas, (0.02, 0.03, 0.05), cover(size, _bridge))
    vignette(canvas, 0.3)
    return finished(canvas)


def _bridge(pen: Pen) -> None:
    """The truss as a silhouette, end to end."""
    tops = [(60.0 + 20 * bay, 286 - 52 * (1 - abs(bay - 13) / 13) ** 0.8) for bay in range(27)]
    pen.line(tops, 255, 3)
    pen.box(0, 284, 640, 291, 255)
    for x, y in tops:
        pen.line([(x, y), (x, 286)], 255, 1.6)
    for bay, (x, y) in enumerate(tops[:-1]):
        after = tops[bay + 1]
        pen.line([(x, 286), after] if bay < 13 else [(x, y), (after[0], 286)], 255, 1.1)
    pen.polygon([(304, 291), (336, 291), (342, 302), (298, 302)], 255)


@lru_cache(maxsize=2)
def _letters(size: Size) -> Plane:
    name = lettered(size, "The Bridge Keeper", (320, 138), 50, spread=4)
    line = cover(size, box(250, 176, 390, 177.4)) * 0.7
    below = lettered(size, "Quay Street Media Workshop", (320, 200), 17, spread=2) * 0.8
    letters: Plane = np.maximum(np.maximum(name, line), below)[..., None]
    return letters
