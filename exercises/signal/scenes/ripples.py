"""Water against the piles of the quay, close."""

from functools import lru_cache

import numpy as np

from exercises.signal.arrays import Picture, Size
from exercises.signal.scenes.canvas import (
    expose,
    finished,
    glow,
    grid,
    lay,
    tint,
    upright,
    vignette,
)
from exercises.signal.scenes.shapes import Drawing, box, cover
from exercises.signal.scenes.texture import clouded, planks
from exercises.signal.scenes.water import Water

LINE = 176.0
PILES = ((60, 46), (196, 40), (322, 48), (470, 42), (588, 50))


def picture(n: int, size: Size) -> Picture:
    shown = _piles(size).copy()
    _water(size).fill(shown, n)
    return shown


@lru_cache(maxsize=4)
def _water(size: Size) -> Water:
    return Water(
        size,
        LINE,
        height=1.6,
        swell=1.7,
        depth=(0.10, 0.17, 0.17),
        clear=0.75,
        sparkle=(250, 100, (0.42, 0.38, 0.30)),
    )


@lru_cache(maxsize=2)
def _piles(size: Size) -> Picture:
    """Timber piles in front of a stone wall, weed at the water line, the sky over them."""
    canvas = upright(
        size, ((0, (0.66, 0.62, 0.54)), (60, (0.48, 0.46, 0.41)), (176, (0.20, 0.22, 0.20)))
    )
    expose(canvas, 1 + 0.5 * clouded(size, 30, 22, seed=41))
    shade, _ = planks(size, 8 * size[0] / 640, seed=14)
    x, y = grid(size)
    for at, wide in PILES:
        across = np.clip((x - at) / (wide / 2), -1, 1)
        round_ = np.sqrt(1 - across**2) * 0.75 + 0.25 * (1 - across) * 0.9
        wood = tint((0.52, 0.42, 0.31)) * (round_ * (1 + 0.5 * shade))[..., None]
        lay(canvas, wood.astype(np.float32), cover(size, _pile(at, wide)))
    weed = np.clip((y - 128 + 50 * clouded(size, 40, 6, seed=90)) / 40, 0, 1)
    lay(canvas, (0.13, 0.19, 0.10), weed * 0.85)
    lay(canvas, (0.46, 0.36, 0.26), cover(size, box(0, 20, 640, 44)))
    lay(canvas, (0.20, 0.15, 0.11), cover(size, box(0, 44, 640, 50)))
    lay(canvas, (0.88, 0.86, 0.78), cover(size, box(0, 0, 640, 20)))
    expose(canvas, 0.70 + 0.55 * glow(size, (240, 10), 260))
    vignette(canvas, 0.2)
    return finished(canvas)


def _pile(at: float, wide: float) -> Drawing:
    return box(at - wide / 2, 0, at + wide / 2, LINE + 4)
