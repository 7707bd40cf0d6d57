"""Painting: colours on an array of rows × columns × 3, 0 to 1.

Places are given in points: a scene is 640 points wide and 480 high at every size.
"""

from collections.abc import Sequence

import numpy as np
from PIL import Image, ImageFilter

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.scenes.texture import clouded

Colour = tuple[float, float, float]


def tint(colour: Colour) -> Plane:
    return np.array(colour, np.float32)


def grid(size: Size) -> tuple[Plane, Plane]:
    """Columns (1 × width) and rows (height × 1), in points."""
    width, height = size
    x = (np.arange(width, dtype=np.float32) + 0.5) * np.float32(640 / width)
    y = (np.arange(height, dtype=np.float32) + 0.5) * np.float32(480 / height)
    return x[None, :], y[:, None]


def plain(size: Size, colour: Colour) -> Plane:
    return np.broadcast_to(tint(colour), (size[1], size[0], 3)).copy()


def upright(size: Size, stops: Sequence[tuple[float, Colour]]) -> Plane:
    """Colours that change down the picture; each stop is a height in points and its colour."""
    _, y = grid(size)
    at = [stop for stop, _ in stops]
    bands = [np.interp(y[:, 0], at, [colour[band] for _, colour in stops]) for band in range(3)]
    column = np.stack(bands, axis=1).astype(np.float32)
    return np.repeat(column[:, None, :], size[0], axis=1)


def lay(canvas: Plane, colour: Colour | Plane, cover: Plane) -> None:
    """Paint over it; ``cover`` 0 to 1, rows × columns, says how thickly."""
    canvas += (np.asarray(colour, np.float32) - canvas) * cover[..., None]


def shine(canvas: Plane, colour: Colour, light: Plane) -> None:
    """Add light of a colour; ``light`` is rows × columns."""
    canvas += light[..., None] * tint(colour)


def expose(canvas: Plane, by: Plane) -> None:
    """Make it darker, or lighter, by rows × columns of factors."""
    canvas *= by[..., None]


def glow(size: Size, at: tuple[float, float], reach: float, *, flat: float = 1.0) -> Plane:
    """Light around a place that falls off with distance: 1 there, half at ``reach`` points."""
    x, y = grid(size)
    squared = ((x - at[0]) / reach) ** 2 + ((y - at[1]) / (reach * flat)) ** 2
    light: Plane = 1 / (1 + squared)
    return light


def clouds(size: Size, seed: int, *, across: float = 3, down: float = 9) -> Plane:
    """How thick the cloud is, 0 to 1, in long drawn banks."""
    thick = clouded(size, across, down, seed=seed, octaves=5, fall=0.55)
    bank: Plane = np.clip(thick * 1.7 + 0.35, 0, 1)
    return bank


def blurred(plane: Plane, radius: float) -> Plane:
    """A plane of 0 to 1 with its edges softened over ``radius`` pixels."""
    image = Image.fromarray((np.clip(plane, 0, 1) * 255).astype(np.uint8))
    soft = np.asarray(image.filter(ImageFilter.GaussianBlur(radius)))
    return soft.astype(np.float32) / 255


def vignette(canvas: Plane, strength: float = 0.35) -> None:
    """Darken the corners as a lens does."""
    x, y = grid((canvas.shape[1], canvas.shape[0]))
    out = ((x - 320) / 320) ** 2 + ((y - 240) / 240) ** 2
    canvas *= (1 - strength * np.clip(out - 0.5, 0, 1.5) / 1.5)[..., None]


def finished(canvas: Plane) -> Picture:
    """As the camera gives it, dithered by a fixed pattern so that no gradient shows bands."""
    height, width = canvas.shape[:2]
    dither = np.random.Generator(np.random.PCG64(7)).random((height, width, 1), dtype=np.float32)
    return shown_as(canvas * 255 + dither)


def shown_as(canvas: Plane) -> Picture:
    """From 0 to 255, not rounded, to what a screen takes."""
    shown: Picture = np.clip(canvas, 0, 255).astype(np.uint8)
    return shown


def over(picture: Picture, upper: Picture | Plane, thick: Plane) -> Picture:
    """One picture laid over another; ``thick`` is rows × columns × 1, 0 to 1."""
    return shown_as(picture + (upper - picture.astype(np.float32)) * thick)
