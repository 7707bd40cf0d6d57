"""Tools on the wall of the hut; a patch of sun creeps over them."""

from functools import lru_cache
from itertools import pairwise
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
from exercises.signal.scenes.light import Light, lit
from exercises.signal.scenes.relief import Ball, Limb, Relief, Skin, Solid
from exercises.signal.scenes.shapes import Pen, box, cover
from exercises.signal.scenes.texture import clouded, planks

LIGHT = Light((-0.62, -0.52, 0.60), (1.0, 0.96, 0.88), (0.42, 0.43, 0.46), cast=20)
STEEL = Skin((0.42, 0.45, 0.48), 0.8, 0.25)
IRON = Skin((0.20, 0.19, 0.19), 0.5, 0.5)
WOOD = Skin((0.56, 0.37, 0.20), 0.2, 0.5)
ROPE = Skin((0.66, 0.56, 0.38), 0.0, 1.6)
TIN = Skin((0.45, 0.16, 0.12), 0.7, 0.2)
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
    relief.add([*_hammer(), *_saw(), *_spanners(), *_coil(), *_oil_can(), *_pegs()])
    image = lit(relief, LIGHT)
    there = np.asarray(image)[..., 3].astype(np.float32) / 255
    flat = cover(size, _blade) + cover(size, box(330, 408, 612, 426))
    there = np.minimum(there + flat, 1)
    off = round(9 * size[0] / 640)
    return image, blurred(np.roll(there, (off, off), (0, 1)), 3.5 * size[0] / 640)


def _pegs() -> list[Solid]:
    return [
        Limb((x, y, 0), (x, y - 3, 16), (4, 4), WOOD) for x, y in ((92, 96), (236, 92), (520, 90))
    ]


def _hammer() -> list[Solid]:
    return [
        Limb((92, 104, 6), (96, 300, 4), (7, 10), WOOD),
        Limb((52, 108, 8), (122, 108, 8), (16, 15), IRON, soft=1),
        Limb((48, 108, 8), (38, 108, 8), (19, 19), STEEL, soft=1),
    ]


def _saw() -> list[Solid]:
    """Its handle; the blade is flat."""
    return [
        Limb((196, 118, 6), (244, 104, 6), (12, 12), WOOD, soft=4),
        Limb((196, 118, 6), (198, 152, 6), (12, 12), WOOD, soft=4),
        Limb((244, 104, 6), (248, 150, 6), (12, 13), WOOD, soft=4),
        Limb((198, 152, 6), (248, 150, 6), (10, 10), WOOD, soft=4),
    ]


def _blade(pen: Pen) -> None:
    teeth = [(202 + 25 * part / 40 - 3 * (part % 2), 152 + 240 * part / 40) for part in range(41)]
    pen.polygon([(252, 148), (262, 388), *reversed(teeth)], 255)


def _spanners() -> list[Solid]:
    solids: list[Solid] = []
    for number, x in enumerate((310, 346, 380)):
        long, thick = 150 - 24 * number, 7.5 - number
        top, low = 116.0, 116.0 + long
        solids += [Limb((x, top, 2), (x, low, 2), (thick, thick), STEEL)]
        for y, side in ((top, -1), (low, 1)):
            solids += [
                Limb((x, y, 3), (x - 11, y + side * 16, 3), (thick, thick * 0.8), STEEL, soft=3),
                Limb((x, y, 3), (x + 11, y + side * 16, 3), (thick, thick * 0.8), STEEL, soft=3),
            ]
    return solids


def _coil() -> list[Solid]:
    around: list[Solid] = []
    for turn, radius in enumerate((72, 62, 67)):
        places = [
            (
                520 + 0.78 * radius * sin(step / 16 * 6.2832),
                178 - 1.15 * radius * sin(step / 16 * 6.2832 + 1.5708),
            )
            for step in range(17)
        ]
        around += [
            Limb((*start, 3.0 + 3 * turn), (*end, 3.0 + 3 * turn), (6.5, 6.5), ROPE, soft=1)
            for start, end in pairwise(places)
        ]
    return [
        *around,
        Limb((520, 92, 14), (516, 122, 14), (7, 7), ROPE),
        Limb((536, 240, 10), (560, 330, 6), (6, 5), ROPE),
    ]


def _oil_can() -> list[Solid]:
    return [
        Ball((400, 378, 4), (44, 34, 30), TIN),
        Limb((400, 352, 6), (404, 330, 6), (15, 9), TIN, soft=4),
        Limb((404, 332, 6), (468, 272, 8), (6, 2.6), TIN, soft=2),
        Limb((362, 372, 8), (352, 336, 8), (5, 5), TIN, soft=3),
        Limb((352, 336, 8), (392, 336, 8), (5, 5), TIN, soft=3),
        Limb((540, 404, 4), (540, 356, 4), (26, 26), STEEL, soft=2),
        Ball((540, 352, 8), (24, 8, 20), IRON, soft=1),
    ]


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
