"""The harbour at dawn, the swing bridge in the distance."""

from functools import lru_cache
from math import sin

import numpy as np
from PIL import Image

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.scenes.afloat import draw_tug, gull_drawing
from exercises.signal.scenes.bridge import Eye, Paint, draw_bridge, draw_pier
from exercises.signal.scenes.canvas import (
    Colour,
    clouds,
    expose,
    finished,
    glow,
    lay,
    over,
    shine,
    upright,
    vignette,
)
from exercises.signal.scenes.shapes import Drawing, Pen, cover, outline, stamp
from exercises.signal.scenes.texture import clouded, planks
from exercises.signal.scenes.water import Water

HORIZON = 262.0
SUN = (438.0, 236.0)
SKY = (
    (0.0, (0.22, 0.30, 0.44)),
    (120.0, (0.44, 0.49, 0.58)),
    (205.0, (0.83, 0.68, 0.58)),
    (262.0, (1.0, 0.80, 0.55)),
)
HAZE: Colour = (0.86, 0.70, 0.58)
FAR = Paint((120, 104, 98), (142, 122, 112), (128, 112, 104), (128, 110, 102), (196, 160, 128))


def picture(n: int, size: Size) -> Picture:
    image = Image.fromarray(_sky_and_town(size).copy())
    for gull in range(5):
        x = 90 + 120 * gull + (0.7 + 0.12 * gull) * n % 720
        at = ((x % 720) - 40, 96 + 26 * (gull * 7 % 5) + 9 * sin(n / 23 + gull))
        beat = n * (0.21 + 0.02 * gull) + gull
        around = (at[0] - 16, at[1] - 16, at[0] + 16, at[1] + 16)
        stamp(image, around, gull_drawing(at, 22, beat, (74, 70, 76)))
    bow = 250 + 0.35 * n % 480
    stamp(
        image,
        (bow - 60, HORIZON - 42, bow + 4, HORIZON + 1),
        lambda pen: draw_tug(pen, (bow, HORIZON), 54, 0.45),
    )
    shown = np.asarray(image).copy()
    _water(size).fill(shown, n)
    quay, thick = _quay(size)
    return over(shown, quay, thick)


@lru_cache(maxsize=4)
def _water(size: Size) -> Water:
    return Water(size, HORIZON, height=3.2, sparkle=(SUN[0], 26, (1.0, 0.78, 0.5)), clear=0.6)


@lru_cache(maxsize=4)
def _sky_and_town(size: Size) -> Picture:
    canvas = upright(size, SKY)
    bank = clouds(size, seed=21)
    lay(canvas, (0.50, 0.45, 0.50), bank * 0.55)
    lay(canvas, (1.0, 0.72, 0.52), np.clip(bank - 0.35, 0, 1) * glow(size, SUN, 210, flat=0.45))
    shine(canvas, (0.30, 0.17, 0.04), glow(size, SUN, 46))
    lay(canvas, (1.0, 0.95, 0.80), np.clip(glow(size, SUN, 12) * 2.4 - 1.1, 0, 1))
    for away, seed, high in ((0.9, 3, 34), (0.75, 8, 22)):
        lay(canvas, _hazed((0.24, 0.28, 0.34), away), cover(size, _hills(seed, high)))
    lay(canvas, _hazed((0.22, 0.22, 0.26), 0.55), cover(size, _town))
    lay(canvas, (1.0, 0.86, 0.55), cover(size, _windows) * 0.8)
    image = Image.fromarray(finished(canvas))
    eye = Eye(back=215, x=24, height=3.2, horizon=HORIZON - 1)
    stamp(image, (60, 150, 420, HORIZON + 1), lambda pen: draw_pier(pen, eye, FAR))
    stamp(image, (60, 150, 420, HORIZON + 1), lambda pen: draw_bridge(pen, eye, 14, FAR))
    return np.asarray(image)


def _hazed(colour: Colour, away: float) -> Colour:
    red, green, blue = (near + (far - near) * away for near, far in zip(colour, HAZE, strict=True))
    return red, green, blue


def _hills(seed: int, high: float) -> Drawing:
    ridge = clouded((640, 4), 5, 2, seed=seed, octaves=5)[0]
    points = [(float(x), HORIZON - high * (0.55 + float(ridge[x]))) for x in range(0, 640, 2)]
    return outline([(0, HORIZON), *points, (640, HORIZON)])


def _town(pen: Pen) -> None:
    ridge = clouded((640, 4), 40, 2, seed=77, octaves=2)[0]
    x = -4.0
    while x < 640:
        step = 10 + 14 * abs(float(ridge[int(max(x, 0)) % 640]))
        high = 12 + 26 * abs(float(ridge[int(max(x, 0) * 3 + 50) % 640]))
        if not 120 < x < 330:
            pen.box(x, HORIZON - high, x + step - 1, HORIZON, 255)
            pen.polygon(
                [
                    (x - 1, HORIZON - high),
                    (x + step / 2, HORIZON - high - 6),
                    (x + step, HORIZON - high),
                ],
                255,
            )
        x += step
    pen.polygon(
        [
            (560, HORIZON - 20),
            (560, HORIZON - 58),
            (566, HORIZON - 92),
            (572, HORIZON - 58),
            (572, HORIZON - 20),
        ],
        255,
    )
    pen.line([(40, HORIZON), (40, HORIZON - 74)], 255, 3)
    pen.line([(30, HORIZON - 66), (92, HORIZON - 84)], 255, 2)
    pen.line([(40, HORIZON - 74), (84, HORIZON - 82)], 255, 1)


def _windows(pen: Pen) -> None:
    for number in range(26):
        x, y = (number * 53.7) % 640, HORIZON - 6 - (number * 7.3) % 16
        if not 110 < x < 350:
            pen.box(x, y, x + 2, y + 2.6, 200)


@lru_cache(maxsize=4)
def _quay(size: Size) -> tuple[Picture, Plane]:
    """The quay in front, and where it is."""
    canvas = upright(size, ((380, (0.34, 0.28, 0.25)), (480, (0.16, 0.14, 0.14))))
    shade, gaps = planks(size, 26 * size[0] / 640, seed=4)
    expose(canvas, 1 + 0.35 * shade)
    lay(canvas, (0.05, 0.05, 0.06), gaps * 0.8)
    edge = cover(size, outline([(0, 404), (250, 422), (430, 480), (0, 480)]))
    lip = cover(size, lambda pen: pen.line([(0, 404), (250, 422), (430, 480)], 255, 4))
    lay(canvas, (0.80, 0.60, 0.44), lip)
    things = cover(size, _lamp_and_bollard)
    lay(canvas, (0.11, 0.11, 0.13), things)
    vignette(canvas, 0.2)
    return finished(canvas), np.maximum(np.maximum(edge, lip), things)[..., None]


def _lamp_and_bollard(pen: Pen) -> None:
    pen.line([(92, 420), (92, 120)], 255, 5)
    pen.line([(92, 122), (96, 108), (110, 104), (124, 108)], 255, 3.5)
    pen.polygon([(116, 108), (132, 108), (137, 122), (111, 122)], 255)
    pen.box(86, 396, 98, 424, 255)
    pen.polygon(
        [
            (196, 440),
            (201, 404),
            (194, 396),
            (194, 389),
            (232, 389),
            (232, 396),
            (225, 404),
            (230, 444),
        ],
        255,
    )
