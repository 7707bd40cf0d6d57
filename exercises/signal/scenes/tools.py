"""Tools on the wall of the hut; a patch of sun creeps over them."""

from functools import lru_cache
from math import sin

import numpy as np
from PIL import Image

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.scenes.canvas import (
    blurred,
    expose,
    finished,
    glow,
    grid,
    lay,
    plain,
    tint,
    vignette,
)
from exercises.signal.scenes.implements import implements
from exercises.signal.scenes.light import Light, lit
from exercises.signal.scenes.relief import Relief
from exercises.signal.scenes.shapes import Pen, box, cover
from exercises.signal.scenes.texture import clouded, planks

LIGHT = Light((-0.62, -0.52, 0.60), (1.0, 0.96, 0.88), (0.42, 0.43, 0.46), cast=20)
MOTES = 46


def picture(n: int, size: Size) -> Picture:
    shaded, sunny = _wall(size)
    lit_by = _sun(size, n)[..., None]
    shown = shaded + (sunny - shaded) * lit_by
    _dust(shown, lit_by[..., 0], n)
    return np.clip(shown, 0, 255).astype(np.uint8)


@lru_cache(maxsize=2)
def _wall(size: Size) -> tuple[Plane, Plane]:
    """The wall in the shade and in the sun, 0 to 255."""
    canvas = plain(size, (0.50, 0.40, 0.30))
    shade, gaps = planks(size, 53.3 * size[0] / 640, seed=33)
    expose(canvas, 1 + 0.32 * shade + 0.15 * clouded(size, 8, 6, seed=71))
    lay(canvas, (0.10, 0.08, 0.06), gaps * 0.9)
    tools, shadow = _tools(size)
    expose(canvas, 1 - 0.62 * shadow)
    sheen = 0.9 + 0.5 * clouded(size, 3, 90, seed=8, octaves=2)
    lay(canvas, tint((0.46, 0.48, 0.50)) * sheen[..., None], cover(size, _blade))
    lay(canvas, (0.42, 0.29, 0.17), cover(size, box(330, 410, 612, 426)))
    lay(canvas, (0.62, 0.46, 0.29), cover(size, box(330, 408, 612, 411)))
    image = Image.fromarray(finished(canvas))
    image.paste(tools, (0, 0), tools)
    wall = np.asarray(image).astype(np.float32) / 255
    dim = wall * tint((0.46, 0.50, 0.58)) * (0.75 + 0.4 * glow(size, (200, 140), 300))[..., None]
    bright = wall * tint((1.42, 1.24, 0.96))
    vignette(dim, 0.4)
    return dim * 255, bright * 255


def _tools(size: Size) -> tuple[Image.Image, Plane]:
    relief = Relief((0, 0, 640, 480), 2 * size[0] / 640)
    relief.add(implements())
    image = lit(relief, LIGHT)
    there = np.asarray(image)[..., 3].astype(np.float32) / 255
    flat = cover(size, _blade) + cover(size, box(330, 408, 612, 426))
    there = np.minimum(there + flat, 1)
    off = round(9 * size[0] / 640)
    return image, blurred(np.roll(there, (off, off), (0, 1)), 3.5 * size[0] / 640)


def _blade(pen: Pen) -> None:
    teeth = [(202 + 25 * part / 40 - 3 * (part % 2), 152 + 240 * part / 40) for part in range(41)]
    pen.polygon([(252, 148), (262, 388), *reversed(teeth)], 255)


def _sun(size: Size, n: int) -> Plane:
    """Light through a window of four panes, that slides to the right, soft at its edges."""
    x, y = grid(size)
    slide = 60 + 0.10 * n % 260
    along, down = x - slide - 0.35 * y, y - 40 - 0.12 * x
    panes = np.zeros((size[1], size[0]), np.float32)
    for left in (0, 112):
        for top in (0, 138):
            across = np.clip(np.minimum(along - left, left + 100 - along) / 9 + 0.5, 0, 1)
            upright = np.clip(np.minimum(down - top, top + 126 - down) / 9 + 0.5, 0, 1)
            panes += across * upright
    flicker = 0.94 + 0.05 * sin(n / 37)
    return (panes * flicker).astype(np.float32)


def _dust(shown: Plane, light: Plane, n: int) -> None:
    """Motes that drift in the beam."""
    height, width = light.shape
    for mote in range(MOTES):
        x = (mote * 97.3 + 0.35 * n * (1 + mote % 3) + 14 * sin(n / 40 + mote)) % 640 * width / 640
        y = (
            (mote * 61.7 - 0.12 * n * (1 + mote % 2) + 9 * sin(n / 55 + 2 * mote))
            % 480
            * height
            / 480
        )
        row, column = min(height - 2, int(y)), min(width - 2, int(x))
        shown[row : row + 2, column : column + 2] += 60 * light[row, column]
