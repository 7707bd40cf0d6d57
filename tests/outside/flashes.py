"""Flashes as WCAG 2.2, success criterion 2.3.1, defines them, counted in moving pictures.

General flash: a pair of opposing changes of relative luminance by 0.1 or more, the darker
state under 0.80. Red flash: a pair of opposing changes to or from a saturated red, R/(R+G+B)
of 0.8 or more, by more than 20 in (R - G - B) × 320. They count where they fill more than a
quarter of any 10° field, 341 × 256 pixels of a screen of 1024 × 768; fine even patterns, as
noise, of less than 0.1° don't count. R, G, B are linear, by the sRGB
curve of IEC 61966-2-1.

Pictures are shown at their own size, so that a pixel is one of that screen's, or `zoom` times as
large: what is drawn smaller is looked at from as near. They are averaged
over cells of half a degree, which takes the noise out. A field's count in a second is the one
that a quarter of its cells reach, whether or not they do so together: more is counted than the
definition asks for. A picture smaller than a field has to fill as many cells as a quarter of it.
"""

from collections.abc import Iterable

import numpy as np
from numpy.typing import NDArray

from exercises.signal.arrays import Mask, Picture, Plane

STEP, BRIGHT = 0.10, 0.80
RED, RED_STEP = 0.80, 20.0
LUMINANCE = np.array([0.2126, 0.7152, 0.0722], np.float32)
SIDE = 16  # pixels, 0.47°
FIELD = (341 // SIDE, 256 // SIDE)  # cells across and down
LIGHT = np.where(
    np.arange(256) / 255 <= 0.04045,
    np.arange(256) / 255 / 12.92,
    ((np.arange(256) / 255 + 0.055) / 1.055) ** 2.4,
).astype(np.float32)


class Turns:
    """How often each cell turned from falling to rising or back, by frame.

    A turn is a change by ``step`` from the last extreme, the lower of the two under ``under``.
    """

    def __init__(self, step: float, under: float) -> None:
        self.step, self.under = step, under
        self.made: list[Mask] = []
        self._states: tuple[Plane, Plane, NDArray[np.int8]] | None = None

    def see(self, value: Plane, may: Mask | bool = True) -> None:
        """``may`` is false where a turn would not count."""
        if self._states is None:
            self._states = value.copy(), value.copy(), np.zeros(value.shape, np.int8)
        low, high, rising = self._states
        up = (rising <= 0) & (value - low >= self.step) & (low < self.under) & may
        down = (rising >= 0) & (high - value >= self.step) & (value < self.under) & may & ~up
        rising[up], rising[down] = 1, -1
        low[:] = np.where(up | down, value, np.minimum(low, value))
        high[:] = np.where(up | down, value, np.maximum(high, value))
        self.made.append(up | down)

    def most(self, rate: int) -> float:
        """Flashes, two turns each, in the worst second of the worst field."""
        turns = np.cumsum(np.array([np.zeros_like(self.made[0]), *self.made], np.int32), axis=0)
        second = min(rate, len(self.made))
        return max(_quarter(count) for count in turns[second:] - turns[:-second]) / 2


def flashes(frames: Iterable[Picture], rate: int, zoom: int = 1) -> tuple[float, float]:
    """General and red flashes in the worst second: at most 3 are allowed, under 3 is ours."""
    general, red = Turns(STEP, BRIGHT), Turns(RED_STEP, np.inf)
    ever_red: Mask | None = None
    for frame in frames:
        light = cells(frame, SIDE // zoom)
        general.see(light @ LUMINANCE)
        saturated: Mask = light[..., 0] >= RED * np.maximum(light.sum(axis=-1), 1e-6)
        ever_red = saturated if ever_red is None else ever_red | saturated
        red.see(np.maximum(0, light[..., 0] - light[..., 1] - light[..., 2]) * 320, ever_red)
    return general.most(rate), red.most(rate)


def cells(frame: Picture, side: int = SIDE) -> Plane:
    """Mean linear light of cells, by every second pixel of a row: rows × columns × 3."""
    rows, columns = (length // side for length in frame.shape[:2])
    light = LIGHT[frame[: rows * side, : columns * side : 2]]
    means: Plane = light.reshape(rows, side, columns, side // 2, 3).mean(axis=(1, 3))
    return means


def _quarter(turns: Plane) -> float:
    """The greatest count that as many cells of some field reach as a quarter of it has."""
    wide, high = min(FIELD[0], turns.shape[1]), min(FIELD[1], turns.shape[0])
    fields = np.lib.stride_tricks.sliding_window_view(turns, (high, wide))[::2, ::2]
    flat = np.sort(fields.reshape(-1, high * wide), axis=1)
    return float(flat[:, -(FIELD[0] * FIELD[1] // 4)].max())
