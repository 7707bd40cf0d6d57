"""A tracking meter: how strong the heads' signal is, on a scale from 0 to 10."""

from collections.abc import Sequence
from dataclasses import dataclass

SCALE = 10


@dataclass(frozen=True, slots=True, kw_only=True)
class Meter:
    """`top` is what it shows at its peak, in hundredths of its scale; that depends on the tape.

    `off` is by how many percent of a track the meter's peak is beside the heads' own.
    """

    top: int
    off: int = 0

    def at(self, tracking: int) -> int:
        """Hundredths of the scale: the signal falls in a straight line on either side."""
        return max(0, round(self.top * (100 - abs(tracking - self.off)) / 100))

    def readings(self, tracking: Sequence[int]) -> tuple[int, ...]:
        return tuple(map(self.at, tracking))


def in_words(reading: int) -> str:
    """What the needle says.

    >>> in_words(62), in_words(40)
    ('6.2', '4')
    """
    return f"{reading * SCALE / 100:g}"
