"""The bridge turning, seen from the quay wall."""

from functools import lru_cache
from math import sin

import numpy as np
from PIL import Image

from exercises.signal.arrays import Mask, Picture, Size
from exercises.signal.scenes.afloat import gull_drawing
from exercises.signal.scenes.bridge import DECK, Eye, Paint, draw_bridge, draw_pier
from exercises.signal.scenes.canvas import (
    clouds,
    expose,
    finished,
    glow,
    lay,
    shine,
    upright,
    vignette,
)
from exercises.signal.scenes.shapes import Pen, cover, outline, stamp
from exercises.signal.scenes.texture import bricks, clouded
from exercises.signal.scenes.water import Water

HORIZON = 300.0
EYE = Eye(back=66, x=-4, height=2.4, focal=560, horizon=HORIZON - 8)
PAINT = Paint((46, 70, 66), (74, 96, 92), (104, 100, 94), (118, 108, 96), (176, 168, 146))
SKY = (
    (0.0, (0.36, 0.52, 0.70)),
    (160.0, (0.62, 0.73, 0.82)),
    (300.0, (0.88, 0.89, 0.86)),
)


STONE = np.array((86, 80, 72), np.uint8)
PIER_FOOT = EYE.sees((0, 0, 0))[1]


def angle(n: int) -> float:
    """Degrees that the bridge has turned: a swing of 70 in 14 seconds, there and back."""
    part = abs((n / 420) % 2 - 1)
    return 8 + 70 * (1 - part * part * (3 - 2 * part))


def picture(n: int, size: Size) -> Picture:
    image = Image.fromarray(_still(size))
    degrees = angle(n)

    def bridge(pen: Pen) -> None:
        draw_pier(pen, EYE, PAINT)
        draw_bridge(pen, EYE, degrees, PAINT)

    stamp(image, (0, 120, 640, 330), bridge)
    _gulls(image, n)
    shown = np.asarray(image).copy()
    _water(size).fill(shown, n)
    foot = slice(round(HORIZON * size[1] / 480), round(PIER_FOOT * size[1] / 480))
    shown[foot][_pier(size)[foot]] = STONE
    wall, there = _wall(size)
    return np.where(there, wall, shown)


def _gulls(image: Image.Image, n: int) -> None:
    for gull in range(3):
        x = (200 * gull + (1.1 + 0.2 * gull) * n) % 760 - 60
        y = 70 + 40 * gull + 12 * sin(n / 31 + 2 * gull)
        drawing = gull_drawing((x, y), 30, n * 0.24 + gull, (236, 238, 240))
        stamp(image, (x - 20, y - 20, x + 20, y + 20), drawing)


@lru_cache(maxsize=4)
def _water(size: Size) -> Water:
    return Water(size, HORIZON, height=4.5, swell=1.3, depth=(0.13, 0.24, 0.25), clear=0.7)


@lru_cache(maxsize=4)
def _pier(size: Size) -> Mask:
    all_over = Paint(pier=255, lit=255, far=255)
    return cover(size, lambda pen: draw_pier(pen, EYE, all_over)) > 0.5


@lru_cache(maxsize=4)
def _still(size: Size) -> Picture:
    canvas = upright(size, SKY)
    bank = clouds(size, seed=52, across=4, down=8)
    lay(canvas, (0.97, 0.97, 0.96), bank * 0.85)
    lay(canvas, (0.60, 0.66, 0.72), np.clip(np.roll(bank, -6, axis=0) - 0.55, 0, 1) * 0.7)
    shine(canvas, (0.16, 0.14, 0.09), glow(size, (90, 40), 150))
    lay(canvas, (0.58, 0.66, 0.68), cover(size, _far_shore))
    lay(canvas, (0.42, 0.47, 0.45), cover(size, _sheds))
    lay(canvas, (0.56, 0.40, 0.34), cover(size, _roofs))
    lay(canvas, (0.30, 0.36, 0.38), cover(size, _openings))
    lay(canvas, (0.50, 0.49, 0.46), cover(size, _abutments))
    return finished(canvas)


def _far_shore(pen: Pen) -> None:
    ridge = clouded((640, 4), 7, 2, seed=5, octaves=4)[0]
    points = [(float(x), HORIZON - 30 - 26 * float(ridge[x])) for x in range(0, 640, 3)]
    pen.polygon([(0, HORIZON), *points, (640, HORIZON)], 255)


SHEDS = ((-20, 96, 46), (96, 60, 34), (420, 84, 40), (504, 130, 56), (634, 40, 30))


def _sheds(pen: Pen) -> None:
    for left, wide, high in SHEDS:
        pen.box(left, HORIZON - high, left + wide, HORIZON, 255)


def _roofs(pen: Pen) -> None:
    for left, wide, high in SHEDS:
        top = HORIZON - high
        pen.polygon(
            [(left - 4, top), (left + wide / 2, top - wide / 4), (left + wide + 4, top)], 255
        )


def _openings(pen: Pen) -> None:
    for left, wide, high in SHEDS:
        for at in range(8, wide - 10, 16):
            pen.box(left + at, HORIZON - high + 10, left + at + 7, HORIZON - high + 20, 255)


def _abutments(pen: Pen) -> None:
    for side in (-1, 1):
        near, far = EYE.sees((side * 36, DECK - 0.2, 2)), EYE.sees((side * 90, DECK - 0.2, 2))
        pen.polygon([near, far, (far[0], HORIZON + 2), (near[0], HORIZON + 2)], 255)


@lru_cache(maxsize=4)
def _wall(size: Size) -> tuple[Picture, Mask]:
    """The quay wall's coping along the bottom, with a ring and a rope; and where it is."""
    shade, joints = bricks(size, 34 * size[1] / 480, seed=6)
    canvas = upright(size, ((430, (0.62, 0.58, 0.52)), (480, (0.36, 0.34, 0.32))))
    expose(canvas, 0.86 + 0.22 * shade + 0.3 * clouded(size, 60, 40, seed=31))
    lay(canvas, (0.16, 0.16, 0.15), joints * 0.8)
    edge = cover(size, outline([(0, 436), (640, 452), (640, 480), (0, 480)]))
    rope = cover(size, _rope)
    lay(
        canvas,
        (0.80, 0.76, 0.68),
        cover(size, lambda pen: pen.line([(0, 437), (640, 453)], 255, 3)),
    )
    lay(canvas, (0.70, 0.60, 0.42), rope)
    vignette(canvas, 0.3)
    return finished(canvas), (np.maximum(edge, rope) > 0.5)[..., None]


def _rope(pen: Pen) -> None:
    pen.polygon([(500, 462), (506, 420), (498, 408), (544, 408), (536, 420), (542, 464)], 255)
    for turn in range(3):
        pen.line([(500, 430 + 8 * turn), (521, 436 + 8 * turn), (541, 430 + 8 * turn)], 200, 5)
    pen.line([(540, 440), (590, 470), (640, 478)], 255, 5)
