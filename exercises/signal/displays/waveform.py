"""The waveform display: every line of a frame over one another, level upwards."""

from functools import lru_cache

import numpy as np

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.displays.raster import Raster, raster
from exercises.signal.lines import Lines
from exercises.signal.picture import Look
from exercises.signal.picture.rendering import played
from exercises.signal.scenes.canvas import finished, lay, plain
from exercises.signal.scenes.lettering import lettered
from exercises.signal.scenes.shapes import Pen, box, cover

LEFT, RIGHT, TOP, BOTTOM = 58.0, 622.0, 26.0, 454.0  # of the scale, in points
TRACE = (0.62, 0.95, 0.66)
SUBCARRIER = {Lines.L525: 3.579545, Lines.L625: 4.43361875}  # MHz (ITU-R BT.1700)


def waveform(picture: Picture, look: Look, n: int) -> Picture:
    """Luma and sync; colour is filtered out, but for the burst."""
    size = picture.shape[1], picture.shape[0]
    canvas = _scale(size, look.lines).copy()
    whole = raster(played(picture, look, n), look.lines)
    lay(canvas, TRACE, _trace(whole, look.lines, size))
    return finished(canvas)


def height(ire: float, lines: Lines) -> float:
    """Where a level lies, in points from the top.

    >>> round(height(120, Lines.L525)), round(height(-50, Lines.L525))
    (26, 454)
    """
    low, high = _range(lines)
    return BOTTOM - (ire - low) * (BOTTOM - TOP) / (high - low)


def _range(lines: Lines) -> tuple[float, float]:
    """From -50 to 120 IRE, or from -350 to 850 mV, in IRE."""
    return (-50, 120) if lines is Lines.L525 else (-50, 850 / 7)


def _trace(whole: Raster, lines: Lines, size: Size) -> Plane:
    """How bright each pixel is, 0 to 1: the more lines pass it, the brighter."""
    rows = lines.rows * size[1] // lines.rows
    columns = whole.level.shape[1]
    level = np.roll(whole.level[:rows], columns - size[0], axis=1)
    burst = np.roll(whole.burst[:rows], columns - size[0], axis=1)
    turn = 2 * np.pi * SUBCARRIER[lines] * lines.active / size[0]
    ringing = np.sin(turn * np.arange(columns) + 2.4 * np.arange(rows)[:, None])
    level = level + burst * lines.burst_peak * ringing
    scale = size[0] / 640
    x = np.round((LEFT + (RIGHT - LEFT) * np.arange(columns) / columns) * scale).astype(np.intp)
    low, high = _range(lines)
    y = (BOTTOM - (level - low) * ((BOTTOM - TOP) / (high - low))) * scale
    inside = np.clip(np.round(y), 0, size[1] - 1).astype(np.intp)
    count = np.bincount((inside * size[0] + x).ravel(), minlength=size[0] * size[1])
    lines_through = count.reshape(size[1], size[0]).astype(np.float32)
    bright: Plane = 1 - np.exp(-lines_through * (14.0 / rows))
    return np.minimum(1, bright + 0.35 * (lines_through > 0))


@lru_cache(maxsize=4)
def _scale(size: Size, lines: Lines) -> Plane:
    canvas = plain(size, (0.05, 0.06, 0.06))
    marks = _marks(lines)
    for level, label in marks:
        y = height(level, lines)
        strong = level in (0, 100)
        ink = (0.52, 0.44, 0.26) if strong else (0.27, 0.24, 0.17)
        lay(canvas, ink, cover(size, box(LEFT, y - 0.6, RIGHT, y + 0.6)))
        lay(canvas, (0.86, 0.78, 0.56), lettered(size, label, (LEFT - 8, y), 15, anchor="rm"))
    if lines.setup:
        lay(canvas, (0.52, 0.44, 0.26), cover(size, lambda pen: _dashes(pen, lines)))
        at = (RIGHT + 2, height(lines.setup, lines) - 8)
        lay(canvas, (0.86, 0.78, 0.56), lettered(size, "7.5", at, 12, anchor="rm"))
    unit = "IRE" if lines is Lines.L525 else "mV"
    lay(canvas, (0.86, 0.78, 0.56), lettered(size, unit, (LEFT - 8, TOP - 12), 13, anchor="rm"))
    return canvas


def _marks(lines: Lines) -> list[tuple[float, str]]:
    """Levels in IRE, and what stands beside them."""
    if lines is Lines.L525:
        return [(level, str(level)) for level in range(-40, 121, 20)]
    return [(millivolts / 7, str(millivolts)) for millivolts in range(-300, 801, 100)]


def _dashes(pen: Pen, lines: Lines) -> None:
    y = height(lines.setup, lines)
    for x in range(int(LEFT), int(RIGHT), 12):
        pen.box(x, y - 0.6, x + 6, y + 0.6, 255)
