"""The swing bridge: a truss that turns on a pier, seen by a pinhole eye."""

from dataclasses import dataclass
from math import cos, radians, sin

from exercises.signal.scenes.shapes import Ink, Pen, Point

Place = tuple[float, float, float]

HALF = 34.0  # metres from the pivot to either end
WIDE = 3.4  # metres from the middle of the road to either truss
BAYS = 12
DECK = 4.2  # metres over the water


@dataclass(frozen=True, slots=True)
class Eye:
    """Metres from the pivot, ``back`` towards the eye; ``focal`` and ``horizon`` in points."""

    back: float
    x: float = 0.0
    height: float = 6.0
    focal: float = 700.0
    horizon: float = 250.0

    def sees(self, place: Place) -> Point:
        x, up, away = place
        distance = max(1.0, self.back - away)
        across = self.focal * (x - self.x) / distance
        return 320 + across, self.horizon - self.focal * (up - self.height) / distance


@dataclass(frozen=True, slots=True)
class Paint:
    """Inks of the truss on the near and the far side, of the road and of the pier."""

    near: Ink | int = (64, 78, 74)
    far: Ink | int = (84, 96, 92)
    road: Ink | int = (96, 92, 88)
    pier: Ink | int = (92, 86, 80)
    lit: Ink | int = (150, 140, 120)


def _turned(along: float, across: float, up: float, degrees: float) -> Place:
    """From the bridge's own axes; at 0° it lies square to the eye, its ``across`` side near."""
    cosine, sine = cos(radians(degrees)), sin(radians(degrees))
    return along * cosine - across * sine, up, along * sine + across * cosine


def _top(along: float) -> float:
    """Height of the upper chord: tallest over the pivot."""
    return DECK + 2.6 + 5.4 * float((1 - abs(along) / HALF) ** 0.8)


def draw_pier(pen: Pen, eye: Eye, paint: Paint) -> None:
    radius = 4.6
    left, right = eye.sees((-radius, 0, 0)), eye.sees((radius, 0, 0))
    top_left, top_right = eye.sees((-radius, DECK - 1, 0)), eye.sees((radius, DECK - 1, 0))
    pen.polygon([top_left, top_right, right, left], paint.pier)
    lit = left[0] + 0.22 * (right[0] - left[0])
    pen.polygon([top_left, (lit, top_left[1]), (lit, left[1]), left], paint.lit)
    for course in (1.0, 2.0):
        y = eye.sees((0, course, 0))[1]
        pen.line([(left[0], y), (right[0], y)], paint.far, 0.7)


def draw_bridge(pen: Pen, eye: Eye, degrees: float, paint: Paint) -> None:
    """Far truss, road, near truss, in that order."""
    near = WIDE if cos(radians(degrees)) >= 0 else -WIDE
    _truss(pen, eye, degrees, -near, paint.far)
    _road(pen, eye, degrees, near, paint)
    _truss(pen, eye, degrees, near, paint.near)


def _road(pen: Pen, eye: Eye, degrees: float, near: float, paint: Paint) -> None:
    def at(along: float, across: float, up: float) -> Point:
        return eye.sees(_turned(along, across, up, degrees))

    pen.polygon(
        [
            at(-HALF, -near, DECK),
            at(HALF, -near, DECK),
            at(HALF, near, DECK),
            at(-HALF, near, DECK),
        ],
        paint.road,
    )
    for side, ink in ((-near, paint.far), (near, paint.near)):
        low, high = DECK - 0.9, DECK + 0.35
        pen.polygon(
            [
                at(-HALF, side, low),
                at(HALF, side, low),
                at(HALF, side, high),
                at(-HALF, side, high),
            ],
            ink,
        )
    for end in (-HALF, HALF):
        low, high = DECK - 0.9, DECK + 0.3
        pen.polygon(
            [at(end, -near, low), at(end, near, low), at(end, near, high), at(end, -near, high)],
            paint.far,
        )
    pen.line([at(-HALF, near, DECK + 0.35), at(HALF, near, DECK + 0.35)], paint.lit, 0.6)


def _truss(pen: Pen, eye: Eye, degrees: float, side: float, ink: Ink | int) -> None:
    def at(along: float, up: float) -> Point:
        return eye.sees(_turned(along, side, up, degrees))

    nodes = [HALF * (2 * bay / BAYS - 1) for bay in range(BAYS + 1)]
    thick = max(0.7, 0.34 * eye.focal / eye.back)
    pen.line([at(node, _top(node)) for node in nodes], ink, thick * 1.5)
    for bay, node in enumerate(nodes):
        pen.line([at(node, DECK), at(node, _top(node))], ink, thick)
        if bay < BAYS:
            after = nodes[bay + 1]
            low, high = (node, after) if bay < BAYS // 2 else (after, node)
            pen.line([at(low, DECK), at(high, _top(high))], ink, thick * 0.8)
    for up in (0.6, 1.1):
        pen.line([at(-HALF, DECK + up), at(HALF, DECK + up)], ink, thick * 0.35)
