"""Rooms behind people, out of focus."""

from functools import lru_cache

import numpy as np
from PIL import Image, ImageFilter

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.scenes.canvas import (
    Colour,
    expose,
    finished,
    glow,
    lay,
    plain,
    shine,
    upright,
    vignette,
)
from exercises.signal.scenes.shapes import Drawing, Pen, box, cover, outline
from exercises.signal.scenes.texture import clouded, planks


@lru_cache(maxsize=4)
def hut(size: Size) -> Picture:
    """The keeper's hut: boards, a window over the harbour, a shelf, a lamp."""
    canvas = plain(size, (0.40, 0.31, 0.23))
    shade, gaps = planks(size, 44 * size[0] / 640, seed=12)
    expose(canvas, 1 + 0.30 * shade)
    lay(canvas, (0.12, 0.09, 0.07), gaps * 0.9)
    expose(canvas, 0.50 + 0.85 * glow(size, (120, 160), 260))
    view = upright(
        size, ((60, (0.80, 0.87, 0.95)), (190, (0.97, 0.93, 0.84)), (240, (0.55, 0.64, 0.68)))
    )
    lay(view, (0.46, 0.52, 0.55), cover(size, box(0, 184, 640, 204)))
    lay(canvas, view, cover(size, box(28, 56, 196, 250)))
    lay(canvas, (0.30, 0.24, 0.18), cover(size, _frame))
    lay(canvas, (0.26, 0.19, 0.13), cover(size, box(444, 196, 640, 206)))
    for colour, drawing in _SHELF:
        lay(canvas, colour, cover(size, drawing))
    shine(canvas, (0.42, 0.28, 0.12), glow(size, (560, 92), 46))
    return _out_of_focus(canvas, 5.0)


def _frame(pen: Pen) -> None:
    pen.box(20, 48, 204, 58, 255)
    pen.box(20, 246, 204, 258, 255)
    for x in (20, 107, 194):
        pen.box(x, 48, x + 9, 256, 255)
    pen.box(20, 146, 204, 153, 255)


_SHELF: tuple[tuple[Colour, Drawing], ...] = (
    ((0.55, 0.20, 0.16), box(470, 158, 494, 196)),
    ((0.62, 0.60, 0.55), box(502, 166, 524, 196)),
    ((0.24, 0.32, 0.38), box(590, 140, 624, 196)),
    (
        (0.85, 0.70, 0.42),
        outline([(540, 64), (580, 64), (592, 104), (528, 104)]),
    ),
    ((0.14, 0.12, 0.10), lambda pen: pen.line([(560, 0), (560, 66)], 255, 3)),
)


@lru_cache(maxsize=4)
def office(size: Size) -> Picture:
    """The harbour office: shelves of logbooks, a tall window at the right."""
    canvas = plain(size, (0.30, 0.28, 0.25))
    for row in range(4):
        for number in range(27):
            lay(canvas, *_spine(size, row, number))
    for y in (104, 212, 320, 428):
        lay(canvas, (0.34, 0.25, 0.17), cover(size, box(0, y, 640, y + 9)))
    lay(canvas, (0.34, 0.25, 0.17), cover(size, box(214, 0, 226, 480)))
    expose(canvas, 0.48 + 0.8 * glow(size, (620, 140), 330))
    lay(canvas, (0.95, 0.96, 0.97), cover(size, box(520, 0, 620, 300)))
    lay(canvas, (0.52, 0.48, 0.42), cover(size, box(565, 0, 574, 300)))
    lay(canvas, (0.45, 0.40, 0.34), cover(size, box(510, 292, 640, 304)))
    expose(canvas, 1 + 0.1 * clouded(size, 6, 5, seed=44))
    return _out_of_focus(canvas, 4.0)


SPINES: tuple[Colour, ...] = (
    (0.42, 0.20, 0.16),
    (0.24, 0.32, 0.30),
    (0.55, 0.46, 0.32),
    (0.22, 0.26, 0.36),
    (0.60, 0.55, 0.46),
)


def _spine(size: Size, row: int, number: int) -> tuple[Colour, Plane]:
    at, lower = 24.0 * number - 7 * (row % 2), 104 + 108 * row
    high = 78 + 12 * ((number * 5 + row * 3) % 3)
    colour = SPINES[(number * 7 + row * 4 + number // 5) % len(SPINES)]
    return colour, cover(size, box(at, lower - high, at + 21, lower))


def _out_of_focus(canvas: Plane, radius: float) -> Picture:
    vignette(canvas, 0.3)
    image = Image.fromarray(finished(canvas))
    soft = image.filter(ImageFilter.GaussianBlur(radius * image.width / 640))
    return finished(np.asarray(soft).astype(np.float32) / 255)
