"""A picture monitor: set right, with its own contrast turned, or with its edges in view."""

from collections.abc import Callable

import numpy as np
from PIL import Image

from exercises.signal.arrays import Picture
from exercises.signal.picture import Look, rendered

OVERSCAN = 0.05  # of the width, and of the height, hidden at each edge (common practice)
SMALLER = 0.86  # what an underscan display leaves of its size for the picture
SURROUND = (22, 23, 25)


def monitor(picture: Picture, look: Look, n: int) -> Picture:
    """The edges lie beyond the screen's, and the lines where the heads change over with them."""
    shown = Image.fromarray(rendered(picture, look, n))
    wide, high = shown.size
    box = (OVERSCAN * wide, OVERSCAN * high, (1 - OVERSCAN) * wide, (1 - OVERSCAN) * high)
    return np.asarray(shown.resize(shown.size, Image.Resampling.BILINEAR, box))


def turned(decibels: float) -> Callable[[Picture, Look, int], Picture]:
    """A monitor whose own contrast stands off: the picture itself is none the worse for it."""
    factor = 10 ** (decibels / 20)

    def shown(picture: Picture, look: Look, n: int) -> Picture:
        bright = np.rint(monitor(picture, look, n).astype(np.float32) * np.float32(factor))
        return np.asarray(np.clip(bright, 0, 255), np.uint8)

    return shown


def underscan(picture: Picture, look: Look, n: int) -> Picture:
    """All of the picture, in a dark surround."""
    shown = Image.fromarray(rendered(picture, look, n))
    inside = round(SMALLER * shown.width), round(SMALLER * shown.height)
    screen = Image.new("RGB", shown.size, SURROUND)
    small = shown.resize(inside, Image.Resampling.BILINEAR, reducing_gap=2.0)
    screen.paste(small, ((shown.width - inside[0]) // 2, (shown.height - inside[1]) // 2))
    return np.asarray(screen)
