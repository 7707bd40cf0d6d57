"""An old photograph of the bridge, the camera moving in."""

from functools import lru_cache

import numpy as np
from PIL import Image

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.scenes import turning
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
from exercises.signal.scenes.shapes import Pen, cover, outline
from exercises.signal.scenes.texture import clouded, grain

LARGER = 1.5  # the table is painted so much larger than the widest view of it


def picture(n: int, size: Size) -> Picture:
    table = _table(size)
    near = _nearness(n)
    wide, high = size[0] * LARGER / near, size[1] * LARGER / near
    left = (size[0] * LARGER - wide) * 0.46
    top = (size[1] * LARGER - high) * 0.42
    seen = table.resize(size, Image.Resampling.BICUBIC, (left, top, left + wide, top + high))
    return np.asarray(seen)


def _nearness(n: int) -> float:
    """1 at the widest, 1.45 when the move ends after ten seconds; then it stays."""
    part = min(1.0, n / 300)
    return 1 + 0.45 * part * part * (3 - 2 * part)


@lru_cache(maxsize=2)
def _table(size: Size) -> Image.Image:
    large = round(size[0] * LARGER), round(size[1] * LARGER)
    canvas = plain(large, (0.32, 0.20, 0.13))
    expose(canvas, 1 + 0.45 * clouded(large, 5, 46, seed=61, octaves=4, fall=0.6))
    shadow = blurred(cover(large, outline(_moved(CARD, 10))), 9 * LARGER)
    expose(canvas, 1 - 0.7 * shadow)
    lay(canvas, (0.86, 0.81, 0.70), cover(large, outline(CARD)))
    lay(canvas, _print(large), cover(large, outline(PRINT)))
    lay(canvas, (0.90, 0.86, 0.76), cover(large, _wear) * 0.6)
    expose(canvas, 0.62 + 0.55 * glow(large, (240, 130), 330))
    vignette(canvas, 0.35)
    return Image.fromarray(finished(canvas))


CARD = [(86.0, 52.0), (560.0, 70.0), (548.0, 438.0), (74.0, 414.0)]
PRINT = [(110.0, 78.0), (536.0, 94.0), (525.0, 394.0), (99.0, 374.0)]


def _moved(points: list[tuple[float, float]], by: float) -> list[tuple[float, float]]:
    return [(x + by, y + by) for x, y in points]


def _print(large: Size) -> Plane:
    """The turning bridge as a plate camera saw it: brown, contrasty, grainy, faded at a corner."""
    small = 640, 480
    seen = Image.fromarray(turning.picture(150, small)).convert("L")
    frame = seen.crop((20, 90, 600, 470)).resize(large, Image.Resampling.BICUBIC)
    shade = np.asarray(frame).astype(np.float32) / 255
    shade = np.clip((shade - 0.42) * 1.35 + 0.45, 0, 1) + 0.02 * grain(large, seed=18)
    x, y = grid(large)
    fade = np.clip(((x - 480) / 260) ** 2 * 0.5 + ((y - 400) / 240) ** 2 * 0.3, 0, 0.35)
    shade = shade * (1 - fade) + 0.75 * fade
    dark, light = tint((0.17, 0.11, 0.07)), tint((0.90, 0.82, 0.66))
    return (dark + (light - dark) * shade[..., None]).astype(np.float32)


def _wear(pen: Pen) -> None:
    pen.line([(470, 92), (478, 150), (472, 214)], 255, 0.8)
    pen.line([(150, 300), (228, 330), (300, 338)], 200, 0.6)
    pen.polygon([(525, 394), (500, 392), (526, 366)], 255)
    for number in range(40):
        at = (110 + (number * 83.1) % 420, 84 + (number * 47.7) % 300)
        pen.disc(at, 0.5 + (number % 3) * 0.5, 210)
