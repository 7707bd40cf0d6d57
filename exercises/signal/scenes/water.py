"""Water below a horizon: it moves, and gives back what stands above it."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from exercises.signal.arrays import Picture, Plane, Size
from exercises.signal.scenes.canvas import Colour, tint

# Waves: across, into the distance (radians a metre), speed (radians a frame), height.
SEA = (
    (0.9, 3.1, 0.115, 0.30),
    (-1.7, 2.3, 0.140, 0.25),
    (2.9, 5.3, 0.190, 0.20),
    (-4.3, 7.9, 0.235, 0.14),
    (7.7, 11.3, 0.290, 0.10),
    (-12.1, 17.0, 0.360, 0.07),
)


@dataclass(frozen=True)
class Water:
    """``horizon`` in points; ``height`` of the eye over the water, in metres.

    swell   how far reflections are drawn apart
    depth   the water's own colour, and ``clear`` how much of it shows close by
    sparkle (column in points, width in points, colour) of the sun's path, if there is one
    """

    size: Size
    horizon: float
    height: float = 3.0
    swell: float = 1.0
    depth: Colour = (0.10, 0.15, 0.18)
    clear: float = 0.55
    sparkle: tuple[float, float, Colour] | None = None

    @cached_property
    def top(self) -> int:
        """The first row of water."""
        return round(self.horizon * self.size[1] / 480)

    @cached_property
    def _below(self) -> Plane:
        """Points below the horizon, for each row of water."""
        rows = np.arange(self.size[1] - self.top, dtype=np.float32)
        return (rows[:, None] + 0.5) * np.float32(480 / self.size[1])

    @cached_property
    def _phases(self) -> list[Plane]:
        """Each wave's phase where nothing has moved yet."""
        columns = (np.arange(self.size[0], dtype=np.float32) + 0.5) * np.float32(640 / self.size[0])
        away = self.height * 420 / (self._below + 1.5)
        across = (columns[None, :] - 320) * away / 420
        return [
            (kx * across + kz * away + 2.4 * number).astype(np.float32)
            for number, (kx, kz, _, _) in enumerate(SEA)
        ]

    @cached_property
    def _fine(self) -> list[Plane]:
        """How much of each wave is left where it is too far away to be seen."""
        away = self.height * 420 / (self._below + 1.5)
        each_row = away * away / (self.height * 420)  # metres of water in a point of height
        return [np.exp(-((kz * each_row) ** 2) / 5).astype(np.float32) for _, kz, _, _ in SEA]

    def slopes(self, n: int) -> Plane:
        total = np.zeros_like(self._phases[0])
        for phase, fine, (_, _, speed, high) in zip(self._phases, self._fine, SEA, strict=True):
            total += np.sin(phase + np.float32(speed * n)) * (fine * np.float32(high))
        return total

    def fill(self, picture: Picture, n: int) -> None:
        """Paint the water into a picture whose part above the horizon is done."""
        slopes = self.slopes(n)
        shown = picture[self._mirrored(slopes)].astype(np.float32)
        facing = np.clip(self._below / 260 + slopes * 0.30, 0.0, 1.0)
        depth = tint(self.depth) * 255
        shown += (depth - shown) * (self.clear * facing)[..., None]
        shown *= (0.95 + 0.16 * slopes)[..., None]
        if self.sparkle is not None:
            column, width, colour = self.sparkle
            shown += self._glints(slopes, column, width)[..., None] * (tint(colour) * 255)
        picture[self.top :] = np.clip(shown, 0, 255)

    def _mirrored(self, slopes: Plane) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
        scale = self.size[1] / 480
        stretch = self.swell * (4 + 0.20 * self._below)
        rows = self.top - (self._below * (0.94 + 0 * slopes) + stretch * slopes) * scale
        columns = np.arange(self.size[0])[None, :] + slopes * stretch * (0.55 * scale)
        return (
            np.clip(rows, 0, self.top - 1).astype(np.intp),
            np.clip(columns, 0, self.size[0] - 1).astype(np.intp),
        )

    def _glints(self, slopes: Plane, column: float, width: float) -> Plane:
        x = (np.arange(self.size[0], dtype=np.float32) + 0.5) * np.float32(640 / self.size[0])
        spread = width * (0.5 + self._below / 90)
        path: Plane = np.exp(-(((x[None, :] - column) / spread) ** 2))
        glints: Plane = path * np.clip(slopes * 3.2 - 0.55, 0, 1)
        return glints
