"""People talking in front of a room."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from math import sin

import numpy as np
from PIL import Image

from exercises.signal.arrays import Picture, Size
from exercises.signal.scenes.face import CLERK, KEEPER, Likeness, head
from exercises.signal.scenes.light import Light, lit
from exercises.signal.scenes.relief import Relief
from exercises.signal.scenes.rooms import hut, office
from exercises.signal.scenes.speech import blink, chatter

BOX = (40.0, 30.0, 600.0, 480.0)
STEPS = 5  # a mouth is drawn in so many openings, so that a face is drawn once for each
KEPT = 24  # faces, about 1 MB each at the usual size


@dataclass(frozen=True, slots=True)
class Interview:
    """Who talks where, in what light, and how far off the middle."""

    person: Likeness
    room: Callable[[Size], Picture]
    light: Light
    across: float


WINDOW = Light(
    (-0.75, -0.50, 0.60), (1.18, 1.12, 1.02), (0.46, 0.45, 0.46), (0.16, 0.14, 0.10), cast=50
)
NORTH = Light(
    (0.60, -0.34, 0.80), (1.08, 1.08, 1.10), (0.52, 0.50, 0.49), (0.10, 0.11, 0.13), cast=50
)
HUT = Interview(KEEPER, hut, WINDOW, 34)
OFFICE = Interview(CLERK, office, NORTH, -46)


def keeper(n: int, size: Size, mouth: float | None = None) -> Picture:
    return _talking(HUT, n, size, chatter(n) if mouth is None else mouth)


def clerk(n: int, size: Size, mouth: float | None = None) -> Picture:
    return _talking(OFFICE, n, size, chatter(n + 40) if mouth is None else mouth)


def _talking(interview: Interview, n: int, size: Size, mouth: float) -> Picture:
    image = Image.fromarray(interview.room(size))
    shown = _posed(interview, size, round(STEPS * mouth), round(2 * blink(n)))
    scale = size[0] / 640
    across = (interview.across + 2.4 * sin(n / 41) + 1.2 * sin(n / 17)) * scale
    down = (1.4 * sin(n / 29) + 1.2 * mouth) * scale
    left, top = round(BOX[0] * scale + across - 0.5), round(BOX[1] * scale + down - 0.5)
    rest = (1, 0, left - BOX[0] * scale - across, 0, 1, top - BOX[1] * scale - down)
    moved = shown.transform(shown.size, Image.Transform.AFFINE, rest, Image.Resampling.BILINEAR)
    image.paste(moved, (left, top), moved)
    return np.asarray(image)


@lru_cache(maxsize=KEPT)
def _posed(interview: Interview, size: Size, mouth: int, lids: int) -> Image.Image:
    relief = Relief(BOX, 2 * size[0] / 640)
    relief.add(head(interview.person, mouth=mouth / STEPS, blink=lids / 2))
    return lit(relief, interview.light)
