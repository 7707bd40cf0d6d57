"""Pictures as a file for a browser: one, or many side by side in one."""

import io
from collections.abc import Iterable

import numpy as np
from PIL import Image

from exercises.signal.arrays import Picture, Size

QUALITY = 85


def jpeg(picture: Picture) -> bytes:
    """Without any note of how it was made."""
    held = io.BytesIO()
    Image.fromarray(picture).save(held, "JPEG", quality=QUALITY)
    return held.getvalue()


def sheet(pictures: Iterable[Picture], size: Size, *, across: int, down: int) -> Picture:
    """Pictures of one size, side by side in rows."""
    width, height = size
    whole = np.zeros((down * height, across * width, 3), np.uint8)
    for number, each in enumerate(pictures):
        top, left = number // across * height, number % across * width
        whole[top : top + height, left : left + width] = each
    return whole
