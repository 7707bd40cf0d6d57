"""A hand on the lever, close."""

from functools import lru_cache
from math import cos, pi, radians, sin

import numpy as np
from PIL import Image, ImageFilter

from exercises.signal.arrays import Picture, Size
from exercises.signal.scenes.canvas import expose, finished, glow, lay, plain, vignette
from exercises.signal.scenes.light import Light, lit
from exercises.signal.scenes.relief import Ball, Limb, Relief, Skin, Solid
from exercises.signal.scenes.shapes import Pen, cover
from exercises.signal.scenes.texture import clouded, planks

BOX = (-60.0, -60.0, 700.0, 540.0)
FOOT = (300.0, 520.0)  # where the lever is hinged
LIGHT = Light((-0.62, -0.66, 0.50), (1.22, 1.08, 0.88), (0.36, 0.38, 0.42), (0.22, 0.18, 0.12), 70)

STEEL = Skin((0.34, 0.36, 0.38), 0.9, 0.15)
BRASS = Skin((0.70, 0.52, 0.24), 0.9, 0.1)
SKIN = Skin((0.80, 0.55, 0.43), 0.10, 0.22)
NAIL = Skin((0.88, 0.66, 0.56), 0.35, 0.0)
SLEEVE = Skin((0.17, 0.21, 0.29), 0.0, 1.1)
CUFF = Skin((0.34, 0.37, 0.42), 0.0, 1.6)


def picture(n: int, size: Size) -> Picture:
    image = Image.fromarray(_behind(size))
    scale = size[0] / 640
    hand = _hand(size)
    about = ((FOOT[0] - BOX[0]) * scale, (FOOT[1] - BOX[1]) * scale)
    turned = hand.rotate(_tilt(n), Image.Resampling.BILINEAR, center=about)
    image.paste(turned, (round(BOX[0] * scale), round(BOX[1] * scale)), turned)
    return np.asarray(image)


def _tilt(n: int) -> float:
    """Degrees anticlockwise: the lever is pulled over in two seconds, held, and let back."""
    part = (n % 240) / 240
    pulled = 0.5 - 0.5 * cos(2 * pi * min(1.0, max(0.0, 1.4 * part - 0.2)))
    return 13 * pulled + 0.25 * sin(n / 3.1) * pulled


@lru_cache(maxsize=4)
def _behind(size: Size) -> Picture:
    canvas = plain(size, (0.24, 0.27, 0.25))
    shade, gaps = planks(size, 86 * size[0] / 640, seed=25)
    expose(canvas, 1 + 0.22 * shade + 0.25 * clouded(size, 9, 7, seed=2))
    lay(canvas, (0.06, 0.07, 0.06), gaps * 0.9)
    lay(canvas, (0.30, 0.31, 0.31), cover(size, _plate))
    lay(canvas, (0.12, 0.12, 0.12), cover(size, _slot))
    expose(canvas, 0.42 + 0.95 * glow(size, (150, 110), 250))
    vignette(canvas, 0.35)
    soft = Image.fromarray(finished(canvas)).filter(ImageFilter.GaussianBlur(1.6 * size[0] / 640))
    return finished(np.asarray(soft).astype(np.float32) / 255)


def _plate(pen: Pen) -> None:
    pen.arc(FOOT, 420, (228, 292), 255, 70)
    for angle in range(232, 292, 8):
        at = FOOT[0] + 385 * cos(radians(angle)), FOOT[1] + 385 * sin(radians(angle))
        pen.disc(at, 6, 140)


def _slot(pen: Pen) -> None:
    pen.arc(FOOT, 392, (236, 286), 255, 14)


@lru_cache(maxsize=2)
def _hand(size: Size) -> Image.Image:
    relief = Relief(BOX, 2 * size[0] / 640)
    relief.add([*_lever(), *_fingers(), *_thumb(), *_wrist()])
    return lit(relief, LIGHT)


def _lever() -> list[Solid]:
    return [
        Limb((*FOOT, 0), (310, 120, 0), (17, 13), STEEL),
        Limb((309, 150, 0), (310, 106, 0), (16, 16), BRASS, soft=1),
        Ball((311, 74, 0), (37, 37, 37), BRASS, soft=2),
        Ball((*FOOT, 0), (50, 40, 24), STEEL),
    ]


def _fingers() -> list[Solid]:
    """Four of them, round the bar from the right; the knuckles are at the right."""
    solids: list[Solid] = []
    for y, thick, back in ((172, 17, 0), (205, 18, 4), (238, 17.5, 3), (268, 15, -3)):
        knuckle, joint = (372.0 + back, y - 4.0, 30.0), (334.0 + back, y - 6.0, 44.0)
        tip = (288.0 + back, y + 3.0, 34.0)
        solids += [
            Limb((412 + back, y + 10, 6), knuckle, (20, thick + 2), SKIN, soft=9),
            Limb(knuckle, joint, (thick + 1, thick), SKIN, soft=5),
            Limb(joint, tip, (thick, thick - 2.5), SKIN, soft=4),
            Limb(
                (tip[0] - 7, y + 5, 24),
                (tip[0] - 9, y + 6, 14),
                (thick - 3, thick - 4),
                SKIN,
                soft=4,
            ),
            Ball((tip[0] - 5, y + 1, 46), (9, 8, 6), NAIL, turn=8, soft=2),
        ]
    return solids


def _thumb() -> list[Solid]:
    return [
        Limb((420, 200, 18), (376, 150, 36), (27, 21), SKIN, soft=10),
        Limb((376, 150, 36), (330, 132, 36), (20, 16.5), SKIN, soft=6),
        Limb((330, 132, 36), (296, 138, 30), (16, 13), SKIN, soft=5),
        Ball((296, 132, 40), (11, 8, 6), NAIL, turn=-8, soft=2),
    ]


def _wrist() -> list[Solid]:
    return [
        Ball((430, 228, 4), (52, 66, 34), SKIN, turn=14, soft=14),
        Limb((448, 250, 2), (540, 322, 0), (46, 44), SKIN, soft=14),
        Limb((520, 306, 6), (548, 328, 6), (58, 60), CUFF, soft=3),
        Limb((548, 330, 6), (720, 470, 0), (62, 92), SLEEVE, soft=3),
    ]
