"""Round things: a height for each pixel, built of balls and limbs, lit like clay.

Places are in points, heights towards the viewer too. What lies higher hides what lies
lower; where two meet they run into each other over ``soft`` points.
"""

from dataclasses import dataclass
from math import ceil, cos, floor, radians, sin
from typing import NamedTuple

import numpy as np

from exercises.signal.arrays import Plane
from exercises.signal.scenes.canvas import Colour

FAR = np.float32(-1e4)

Place = tuple[float, float, float]


class Skin(NamedTuple):
    """A surface: its colour 0 to 1, how it shines, how rough it is (points of height)."""

    colour: Colour
    shine: float = 0.0
    rough: float = 0.0


@dataclass(frozen=True, slots=True)
class Ball:
    """An ellipsoid; ``turn`` rotates it in the picture, degrees clockwise."""

    centre: Place
    radii: Place
    skin: Skin
    turn: float = 0.0
    soft: float = 1.5


@dataclass(frozen=True, slots=True)
class Limb:
    """A rounded bar from one place to another, ``thick`` its radius at either end."""

    start: Place
    end: Place
    thick: tuple[float, float]
    skin: Skin
    soft: float = 1.5


Solid = Ball | Limb


class Relief:
    """``box`` is left, top, right, bottom in points; ``scale`` pixels a point."""

    def __init__(self, box: tuple[float, float, float, float], scale: float) -> None:
        self.left, self.top, right, bottom = box
        self.scale = scale
        self.width = ceil((right - self.left) * scale)
        self.depth = ceil((bottom - self.top) * scale)
        self.height = np.full((self.depth, self.width), FAR, np.float32)
        self.skin = np.zeros((self.depth, self.width, 5), np.float32)

    def add(self, solids: list[Solid]) -> None:
        for solid in solids:
            if isinstance(solid, Ball):
                self._ball(solid)
            else:
                self._limb(solid)

    def _window(
        self, left: float, top: float, right: float, bottom: float
    ) -> tuple[tuple[slice, slice], Plane, Plane] | None:
        """The part of the picture that can be touched, with its columns and rows in points."""
        x0 = max(0, floor((left - self.left) * self.scale))
        y0 = max(0, floor((top - self.top) * self.scale))
        x1 = min(self.width, ceil((right - self.left) * self.scale))
        y1 = min(self.depth, ceil((bottom - self.top) * self.scale))
        if x0 >= x1 or y0 >= y1:
            return None
        x = self.left + (np.arange(x0, x1, dtype=np.float32)[None, :] + 0.5) / self.scale
        y = self.top + (np.arange(y0, y1, dtype=np.float32)[:, None] + 0.5) / self.scale
        return (slice(y0, y1), slice(x0, x1)), x.astype(np.float32), y.astype(np.float32)

    def _ball(self, ball: Ball) -> None:
        (cx, cy, cz), (rx, ry, rz) = ball.centre, ball.radii
        reach = max(rx, ry)
        window = self._window(cx - reach, cy - reach, cx + reach, cy + reach)
        if window is None:
            return
        where, x, y = window
        cosine, sine = cos(radians(ball.turn)), sin(radians(ball.turn))
        u = ((x - cx) * cosine + (y - cy) * sine) / rx
        v = ((y - cy) * cosine - (x - cx) * sine) / ry
        inside = 1 - u * u - v * v
        height = np.where(inside > 0, cz + rz * np.sqrt(np.maximum(inside, 0)), FAR)
        self._merge(where, height, ball)

    def _limb(self, limb: Limb) -> None:
        (ax, ay, az), (bx, by, bz) = limb.start, limb.end
        thick = max(limb.thick)
        window = self._window(
            min(ax, bx) - thick, min(ay, by) - thick, max(ax, bx) + thick, max(ay, by) + thick
        )
        if window is None:
            return
        where, x, y = window
        along = (bx - ax) ** 2 + (by - ay) ** 2 + 1e-6
        t = np.clip(((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / along, 0, 1)
        radius = limb.thick[0] + (limb.thick[1] - limb.thick[0]) * t
        off = (x - ax - t * (bx - ax)) ** 2 + (y - ay - t * (by - ay)) ** 2
        inside = radius * radius - off
        top = az + (bz - az) * t + np.sqrt(np.maximum(inside, 0))
        self._merge(where, np.where(inside > 0, top, FAR), limb)

    def _merge(self, where: tuple[slice, slice], height: Plane, solid: Solid) -> None:
        below = self.height[where]
        soft = np.float32(max(solid.soft, 1e-3))
        share = np.clip(0.5 + 0.5 * (height - below) / soft, 0, 1).astype(np.float32)
        met = (below > FAR) & (height > FAR)
        raised = below + (height - below) * share + soft * share * (1 - share) * met
        self.height[where] = np.where(met, raised, np.maximum(below, height))
        skin = np.array([*solid.skin.colour, solid.skin.shine, solid.skin.rough], np.float32)
        self.skin[where] += (skin - self.skin[where]) * share[..., None]
