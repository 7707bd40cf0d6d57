"""A tug passes under the open bridge, seen through the railing."""

from functools import lru_cache
from math import sin

import numpy as np
from PIL import Image

from exercises.signal.arrays import Mask, Picture, Size
from exercises.signal.scenes.afloat import draw_tug, gull_drawing
from exercises.signal.scenes.bridge import Eye, Paint, draw_bridge
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
from exercises.signal.scenes.shapes import Pen, box, cover, stamp
from exercises.signal.scenes.texture import clouded
from exercises.signal.scenes.water import Water

HORIZON = 232.0
SKY = ((0.0, (0.52, 0.60, 0.66)), (140.0, (0.74, 0.77, 0.78)), (232.0, (0.88, 0.85, 0.78)))
EYE = Eye(back=120, x=-26, height=2.4, focal=640, horizon=HORIZON - 6)
GREY = Paint((76, 94, 92), (104, 118, 116), (122, 120, 116), (124, 118, 110), (180, 176, 162))
LONG = 300.0  # of the tug, in points


def picture(n: int, size: Size) -> Picture:
    image = Image.fromarray(_still(size))
    bow, rise = 150 + 1.1 * n % 900, 2.2 * sin(n / 19)
    line = HORIZON + 1 + rise
    tug = (bow - LONG - 12, line - LONG * 0.66, bow + 12, HORIZON + 1)
    _smoke(image, bow - 0.585 * LONG, line - LONG * 0.47, n)
    stamp(image, tug, lambda pen: draw_tug(pen, (bow, line), LONG))
    _gulls(image, n)
    shown = np.asarray(image).copy()
    _water(size).fill(shown, n)
    rail, there = _railing(size)
    return np.where(there, rail, shown)


def _smoke(image: Image.Image, x: float, y: float, n: int) -> None:
    """Puffs that rise from the funnel, grow and thin out."""
    scale = image.width / 640
    for puff in range(9):
        age = ((n + 10 * puff) % 90) / 90
        at = (x - 150 * age + 6 * sin(puff * 2.1 + age * 4), y - 84 * age**0.7)
        blob = _puff(max(2, round((16 + 56 * age) * scale)), round(9 * (1 - age)))
        image.paste(
            (86, 86, 88),
            (round(at[0] * scale) - blob.width // 2, round(at[1] * scale) - blob.height // 2),
            blob,
        )


@lru_cache(maxsize=512)
def _puff(wide: int, thick: int) -> Image.Image:
    y, x = np.mgrid[-1 : 1 : wide * 1j, -1 : 1 : wide * 1j]
    soft = np.clip(1 - x * x - y * y, 0, 1) ** 1.5 * thick * 17
    return Image.fromarray(soft.astype(np.uint8))


def _gulls(image: Image.Image, n: int) -> None:
    for gull in range(4):
        x = 680 - (170 * gull + (1.3 + 0.25 * gull) * n) % 760
        y = 60 + 34 * gull + 14 * sin(n / 27 + 2.4 * gull)
        span = 22 + 9 * gull
        drawing = gull_drawing((x, y), span, n * 0.26 + gull, (244, 245, 244))
        stamp(image, (x - span, y - span, x + span, y + span), drawing)


@lru_cache(maxsize=2)
def _water(size: Size) -> Water:
    return Water(size, HORIZON, height=3.4, swell=1.1, depth=(0.17, 0.24, 0.24), clear=0.75)


@lru_cache(maxsize=2)
def _still(size: Size) -> Picture:
    canvas = upright(size, SKY)
    lay(canvas, (0.93, 0.93, 0.92), clouds(size, seed=97, across=3, down=7) * 0.8)
    lay(canvas, (0.62, 0.67, 0.69), cover(size, _shore))
    lay(canvas, (0.50, 0.52, 0.50), cover(size, _warehouses))
    lay(canvas, (0.38, 0.41, 0.42), cover(size, _openings))
    shine(canvas, (0.12, 0.11, 0.08), glow(size, (520, 60), 200))
    image = Image.fromarray(finished(canvas))
    stamp(image, (0, 60, 640, HORIZON), lambda pen: draw_bridge(pen, EYE, 66, GREY))
    return np.asarray(image)


def _shore(pen: Pen) -> None:
    ridge = clouded((640, 4), 6, 2, seed=19, octaves=4)[0]
    points = [(float(x), HORIZON - 22 - 24 * float(ridge[x])) for x in range(0, 640, 3)]
    pen.polygon([(0, HORIZON), *points, (640, HORIZON)], 255)


HOUSES = ((0, 58, 40), (58, 44, 28), (452, 60, 34), (512, 84, 48), (596, 60, 30))


def _warehouses(pen: Pen) -> None:
    for left, wide, high in HOUSES:
        pen.box(left, HORIZON - high, left + wide, HORIZON, 255)
        pen.polygon(
            [
                (left, HORIZON - high),
                (left + wide / 2, HORIZON - high - 11),
                (left + wide, HORIZON - high),
            ],
            255,
        )


def _openings(pen: Pen) -> None:
    for left, wide, high in HOUSES:
        for row in range(2):
            for at in range(7, wide - 8, 13):
                top = HORIZON - high + 8 + 14 * row
                pen.box(left + at, top, left + at + 5, top + 7, 255)


@lru_cache(maxsize=2)
def _railing(size: Size) -> tuple[Picture, Mask]:
    canvas = upright(size, ((320, (0.25, 0.31, 0.30)), (480, (0.13, 0.17, 0.17))))
    expose(canvas, 1 + 0.4 * clouded(size, 60, 60, seed=73))
    there = cover(size, _bars)
    lay(canvas, (0.62, 0.66, 0.60), cover(size, box(0, 366, 640, 369)))
    lay(canvas, (0.46, 0.50, 0.47), cover(size, _edges))
    vignette(canvas, 0.2)
    return finished(canvas), (there > 0.5)[..., None]


POSTS = range(20, 640, 50)


def _bars(pen: Pen) -> None:
    pen.box(0, 366, 640, 382, 255)
    pen.box(0, 452, 640, 462, 255)
    for x in POSTS:
        pen.box(x, 376, x + 7, 480, 255)


def _edges(pen: Pen) -> None:
    for x in POSTS:
        pen.box(x, 384, x + 2, 480, 255)
