"""The scale of a VU meter, as numbers to draw it from (IEC 60268-17, ANSI C16.5).

The needle turns in proportion to the voltage: 0 VU is at 71 % of the way to +3, where the
scale ends. Coordinates grow to the right and downwards, as on a screen.
"""

from dataclasses import dataclass
from math import cos, inf, radians, sin
from typing import NamedTuple

from exercises.tape.levels import gained

MARKS = (-20, -10, -7, -5, -3, -2, -1, 0, 1, 2, 3)  # dB
END = gained(1, 30)  # deflection at +3
STOP = 1.04  # of the way to the end: the needle rests against a pin there
LOUD = 0  # dB; from here on the scale is drawn to warn


class ScalePoint(NamedTuple):
    x: float
    y: float


PIVOT = ScalePoint(100, 110)


@dataclass(frozen=True, slots=True)
class ScaleMark:
    """A line across the arc, and where its label stands."""

    label: str
    loud: bool
    inner: ScalePoint
    outer: ScalePoint
    text: ScalePoint


@dataclass(frozen=True, slots=True)
class Scale:
    """A needle that turns about ``pivot`` by ``spread`` degrees, upright at its middle."""

    pivot: ScalePoint = PIVOT
    radius: float = 80
    spread: float = 90

    def angle(self, deflection: float) -> float:
        """Degrees clockwise from upright; 1 is 0 VU. The needle stops at either end."""
        way = min(max(deflection / END, 0), STOP)
        return round((way - 0.5) * self.spread, 2)

    def point(self, deflection: float, radius: float) -> ScalePoint:
        turned = radians(self.angle(deflection))
        x, y = self.pivot
        return ScalePoint(round(x + radius * sin(turned), 2), round(y - radius * cos(turned), 2))

    def needle(self, deflection: float) -> ScalePoint:
        """Its tip."""
        return self.point(deflection, self.radius)

    def marks(self) -> tuple[ScaleMark, ...]:
        return tuple(self._mark(decibels) for decibels in MARKS)

    def _mark(self, decibels: int) -> ScaleMark:
        deflection, length = gained(1, 10 * decibels), self.radius / 10
        return ScaleMark(
            f"{decibels:+d}".replace("-", "−") if decibels else "0",
            decibels >= LOUD,
            self.point(deflection, self.radius),
            self.point(deflection, self.radius + length),
            self.point(deflection, self.radius + 2 * length),
        )


def in_words(reading: float) -> str:
    """What a meter says at so many tenths of a dB over 0 VU, to the nearest half.

    >>> in_words(-31), in_words(4), in_words(65)
    ('−3 VU', '+0.5 VU', 'over +3 VU, against the stop')
    """
    if reading == -inf:
        return "at rest"
    if reading < 10 * MARKS[0]:
        return "under −20 VU"
    half = round(reading / 5) / 2
    if half > MARKS[-1]:
        return "over +3 VU, against the stop"
    return f"{half:+g} VU".replace("-", "−") if half else "0 VU"
