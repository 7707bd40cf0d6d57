"""How the player's tracking fits each of eight takes, if nobody touches it after the first.

Tracking differs from recording to recording: a servo's phase, which each camera lays in its own
way (common practice).
"""

from dataclasses import dataclass

from exercises.drills.setting.draw import Draw
from exercises.tape.geometry import envelope_loss
from exercises.tape.limits import LIMITS

TAKES = 8
NEVER = "never"  # the answer where none asks for a hand
# Percent of a track: hardly any fine noise, fine noise without streaks, streaks.
QUIET, FINE, BAND = 6, (26, 40), (56, 75)


@dataclass(frozen=True, slots=True)
class Rehearsals:
    """How far off the heads are in each take, in percent of a track."""

    tracking: tuple[int, ...]

    @property
    def due(self) -> int | None:
        """The first take with fine noise, counted from 0; None where there is none."""
        return next((take for take, off in enumerate(self.tracking) if abs(off) > QUIET), None)

    @property
    def band(self) -> int | None:
        """The first take that would get a noise band."""
        return next((take for take, off in enumerate(self.tracking) if too_far(off)), None)


def place(take: int) -> str:
    """Which take.

    >>> place(3)
    'Take 4'
    """
    return f"Take {take + 1}"


def too_far(tracking: int) -> bool:
    """Whether the tape model calls it a noise band."""
    return round(envelope_loss(tracking)) > LIMITS.envelope_loss


def rehearsals(draw: Draw) -> Rehearsals:
    """Each take but the first is as likely as the others to be due, and so is none of them."""
    due = draw.whole(1, TAKES)
    side = draw.pick((-1, 1))
    off = [draw.whole(-QUIET, QUIET) for _ in range(min(due, TAKES))]
    if due < TAKES:
        off += [side * draw.whole(*FINE), *later(draw, side, TAKES - due - 1)]
    return Rehearsals(tuple(off))


def later(draw: Draw, side: int, count: int) -> list[int]:
    """Takes after the first that is due: one of them far off, the others like any of them."""
    off = [
        draw.whole(-QUIET, QUIET) if draw.chance(0.4) else side * draw.whole(*FINE)
        for _ in range(count)
    ]
    if count:
        off[draw.below(count)] = side * draw.whole(*BAND)
    return off
