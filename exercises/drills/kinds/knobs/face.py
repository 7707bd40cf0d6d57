"""The faces of meters that stand beside a control, as numbers to draw them from."""

from collections.abc import Callable
from dataclasses import dataclass, replace

from exercises.signal.meters.scale import END, Scale, ScaleMark, ScalePoint
from exercises.tape.levels import gained

SCALE = Scale()
TENTHS = range(0, 11, 2)
NUMBERED = ("−20", "−10", "−5", "−3", "0", "+3")  # a small scale has no room for all


@dataclass(frozen=True, slots=True)
class Face:
    """Its marks, and how far the needle turns for what is read: 1 is 0 VU."""

    name: str
    marks: tuple[ScaleMark, ...]
    deflection: Callable[[int], float]

    def needle(self, reading: int) -> ScalePoint:
        """The needle's tip."""
        return SCALE.needle(self.deflection(reading))


def _tenths() -> tuple[ScaleMark, ...]:
    length = SCALE.radius / 10
    return tuple(
        ScaleMark(
            str(tenth),
            False,
            SCALE.point(END * tenth / 10, SCALE.radius),
            SCALE.point(END * tenth / 10, SCALE.radius + length),
            SCALE.point(END * tenth / 10, SCALE.radius + 2 * length),
        )
        for tenth in TENTHS
    )


def _decibels() -> tuple[ScaleMark, ...]:
    return tuple(
        mark if mark.label in NUMBERED else replace(mark, label="") for mark in SCALE.marks()
    )


# By name: readings are hundredths of the scale, and tenths of a dB over line-up.
FACES = {
    face.name: face
    for face in (
        Face("tracking", _tenths(), lambda reading: END * reading / 100),
        Face("vu", _decibels(), lambda reading: gained(1, reading)),
    )
}
