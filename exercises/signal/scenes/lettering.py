"""Letters on pictures, in the typeface that Pillow brings."""

from functools import lru_cache

import numpy as np
from PIL import Image, ImageDraw, ImageFont

from exercises.signal.arrays import Plane, Size


@lru_cache(maxsize=64)
def _face(height: float) -> ImageFont.FreeTypeFont:
    face = ImageFont.load_default(height)
    if not isinstance(face, ImageFont.FreeTypeFont):
        raise RuntimeError("Pillow was built without FreeType, so that letters can't be drawn.")
    return face


def lettered(
    size: Size,
    text: str,
    at: tuple[float, float],
    height: float,
    *,
    spread: float = 0.0,
    anchor: str = "mm",
) -> Plane:
    """How far letters cover each pixel, 0 to 1; places and heights in points."""
    scale = size[0] / 640
    image = Image.new("L", size)
    draw, face = ImageDraw.Draw(image), _face(height * scale)
    if not spread:
        draw.text((at[0] * scale, at[1] * scale), text, 255, face, anchor=anchor)
        return np.asarray(image).astype(np.float32) / 255
    widths = [face.getlength(letter) + spread * scale for letter in text]
    x = at[0] * scale - (sum(widths) - spread * scale) / 2
    for letter, width in zip(text, widths, strict=True):
        draw.text((x, at[1] * scale), letter, 255, face, anchor="lm")
        x += width
    return np.asarray(image).astype(np.float32) / 255
