"""The keeper at his winch in the crank room."""

from functools import lru_cache
from math import cos, pi, sin

import numpy as np
from PIL import Image

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.scenes.at_work import HUB, keeper
from exercises.signal.scenes.canvas import expose, finished, glow, lay, plain, shine, tint, vignette
from exercises.signal.scenes.light import Light, lit
from exercises.signal.scenes.relief import Relief
from exercises.signal.scenes.shapes import Ink, Pen, cover, outline, stamp
from exercises.signal.scenes.texture import bricks, clouded

TURN = 72  # frames a turn of the crank
KEPT = 40  # poses, about half a MB each at the usual size
BOX = (120.0, 90.0, 500.0, 470.0)
LAMP = (500.0, 70.0)
LIGHT = Light((0.72, -0.62, 0.45), (1.25, 0.98, 0.66), (0.24, 0.24, 0.28), (0.30, 0.20, 0.10), 60)


def picture(n: int, size: Size) -> Picture:
    image = Image.fromarray(_room(size))
    wheel = 2 * pi * n / TURN
    stamp(image, (360, 150, 640, 412), lambda pen: _wheels(pen, wheel))
    man, scale = _at_work(n % TURN // 2 * 2, size), size[0] / 640
    image.paste(man, (round(BOX[0] * scale), round(BOX[1] * scale)), man)
    return np.asarray(image)


@lru_cache(maxsize=4)
def _room(size: Size) -> Picture:
    canvas = plain(size, (0.40, 0.27, 0.21))
    shade, joints = bricks(size, 20 * size[1] / 480, seed=9)
    expose(canvas, 0.70 + 0.45 * shade + 0.5 * clouded(size, 14, 10, seed=3))
    lay(canvas, (0.30, 0.27, 0.24), joints * 0.75)
    floor = cover(size, outline([(0, 410), (640, 396), (640, 480), (0, 480)]))
    stone = tint((0.30, 0.27, 0.25)) * (1 + 0.5 * clouded(size, 30, 90, seed=15))[..., None]
    lay(canvas, stone.astype(np.float32), floor)
    lay(canvas, (0.10, 0.08, 0.07), cover(size, _beams))
    expose(canvas, 0.20 + 1.15 * glow(size, (LAMP[0] - 20, LAMP[1] + 60), 190))
    canvas *= tint((1.08, 1.0, 0.84))
    lay(canvas, (0.03, 0.03, 0.03), _contact(size))
    shine(canvas, (0.95, 0.70, 0.36), glow(size, LAMP, 22))
    lay(canvas, (1.0, 0.95, 0.80), cover(size, lambda pen: pen.disc(LAMP, 9, 255, tall=1.2)))
    lay(canvas, (0.05, 0.05, 0.05), cover(size, _lamp_cage))
    vignette(canvas, 0.35)
    return finished(canvas)


def _contact(size: Size) -> Plane:
    spot = glow(size, (240, 452), 84, flat=0.16)
    dark: Plane = 0.75 * np.clip(spot * 1.6 - 0.4, 0, 1)
    return dark


def _beams(pen: Pen) -> None:
    pen.polygon([(0, 0), (640, 0), (640, 26), (0, 40)], 255)
    pen.polygon([(70, 0), (96, 0), (96, 410), (70, 412)], 255)


def _lamp_cage(pen: Pen) -> None:
    pen.line([(LAMP[0], 0), (LAMP[0], 54)], 255, 2)
    pen.polygon([(LAMP[0] - 22, 58), (LAMP[0] - 6, 48), (LAMP[0] + 6, 48), (LAMP[0] + 22, 58)], 255)
    for x in (-11, 0, 11):
        pen.line([(LAMP[0] + x * 0.6, 56), (LAMP[0] + x, 70), (LAMP[0] + x * 0.6, 84)], 255, 1)


def _wheels(pen: Pen, turned: float) -> None:
    """Two toothed wheels on the wall, one driving the other."""
    foot: Ink = (34, 28, 24)
    pen.polygon(
        [(HUB[0] - 16, 408), (HUB[0] - 7, 280), (HUB[0] + 7, 280), (HUB[0] + 16, 408)], foot
    )
    _wheel(pen, (520, 268), 84, 36, -turned / 3, (58, 52, 46))
    _wheel(pen, HUB, 28, 12, turned + 0.2, (78, 66, 54))


def _wheel(
    pen: Pen, hub: tuple[float, float], radius: float, teeth: int, turned: float, ink: Ink
) -> None:
    def at(angle: float, out: float) -> tuple[float, float]:
        return hub[0] + out * cos(angle), hub[1] + out * sin(angle)

    rim = []
    for tooth in range(teeth):
        for part, out in ((0.0, 0.0), (0.22, 0.085), (0.5, 0.085), (0.72, 0.0)):
            rim.append(at(turned + 2 * pi * (tooth + part) / teeth, radius * (1 + out)))
    dark: Ink = (22, 19, 18)
    pen.polygon([(x + 3, y + 4) for x, y in rim], dark)
    pen.polygon(rim, ink)
    pen.disc(hub, radius * 0.84, dark)
    for spoke in range(6):
        angle = turned + pi * spoke / 3
        pen.line([at(angle, 0), at(angle, radius * 0.86)], ink, radius * 0.13)
    pen.disc(hub, radius * 0.24, ink)
    light: Ink = (150, 118, 80)
    pen.arc(hub, radius * 1.0, (250, 340), light, max(1.0, radius * 0.03))
    pen.arc(hub, radius * 0.24, (230, 350), light, max(1.0, radius * 0.04))
    pen.disc(hub, radius * 0.09, dark)


@lru_cache(maxsize=KEPT)
def _at_work(step: int, size: Size) -> Image.Image:
    """Every other step is a pose of its own."""
    relief = Relief(BOX, 2 * size[0] / 640)
    relief.add(keeper(2 * pi * step / TURN))
    return lit(relief, LIGHT)
