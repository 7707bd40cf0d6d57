"""A tracking meter: how strong the heads' signal is, on a scale from 0 to 10."""

from collections.abc import Sequence
from dataclasses import dataclass

SCALE = 10
SECOND = 60  # percent of its own peak that a second one reaches


@dataclass(frozen=True, slots=True, kw_only=True)
class TrackingMeter:
    """`top` is what it shows at its peak, in hundredths of its scale; that depends on the tape.

    A `second`, lower peak stands so many percent of a track beside the heads' own, where they
    read the next track but one (common practice). A `stuck` needle shows its top everywhere.
    """

    top: int
    second: int = 0
    stuck: bool = False

    def at(self, tracking: int) -> int:
        """Hundredths of the scale: the signal falls in a straight line on either side."""
        if self.stuck:
            return self.top
        own = self.top * (100 - abs(tracking)) / 100
        other = self.top * (SECOND - abs(tracking - self.second)) / 100 if self.second else 0
        return max(0, round(own), round(other))

    def readings(self, tracking: Sequence[int]) -> tuple[int, ...]:
        return tuple(map(self.at, tracking))


def in_words(reading: int) -> str:
    """What the needle says.

    >>> in_words(62), in_words(40)
    ('6.2', '4')
    """
    return f"{reading * SCALE / 100:g}"
