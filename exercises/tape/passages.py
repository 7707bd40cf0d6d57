"""A tape from one place where it may change to the next: the one place that cuts it up."""

from collections.abc import Collection, Iterable, Iterator
from itertools import pairwise
from typing import NamedTuple

from exercises.tape.runs import Run
from exercises.tape.tape import SIDES, Side, Tape
from exercises.tape.track import Laid, Pulses


class Passage(NamedTuple):
    """``[start, end)`` of a tape, over which no run begins or ends; a run of it is whole.

    ``rolls``: its pulses have only just begun, so that a machine has not found lock again.
    A side that was not asked for is as blank.
    """

    start: int
    end: int
    pulses: Run[Pulses] | None
    rolls: bool
    picture: Run[Laid] | None
    sound: Run[Laid] | None

    def on(self, side: Side) -> Run[Laid] | None:
        return self.picture if side == "picture" else self.sound

    def laid(self, side: Side) -> Laid | None:
        """What a side holds, from the passage's first frame on."""
        run = self.on(side)
        return run and run.tail(self.start).value


def passages(
    tape: Tape,
    start: int = 0,
    end: int | None = None,
    *,
    relock: int,
    sides: Collection[Side] = SIDES,
    also: Iterable[int] = (),
) -> Iterator[Passage]:
    """``[start, end)`` of a tape, or all of it, cut wherever what it plays may change.

    So it is where control, picture or sound begins, ends or goes over into another recording,
    and where pulses have run on for ``relock`` frames; and at frames that are
    ``also`` named. Neighbours may play alike.
    """
    end = tape.length if end is None else end
    edges = {start, end, *_edges(tape, start, end, relock, sides), *also}
    for first, last in pairwise(sorted(edge for edge in edges if start <= edge <= end)):
        pulses = tape.control.at(first)
        rolls = pulses is not None and first < pulses.start + relock
        picture, sound = (tape.on(side).at(first) if side in sides else None for side in SIDES)
        yield Passage(first, last, pulses, rolls, picture, sound)


def _edges(tape: Tape, start: int, end: int, relock: int, sides: Collection[Side]) -> Iterator[int]:
    for pulses in tape.control.laid.between(start, end):
        yield from (pulses.start, min(pulses.start + relock, pulses.end), pulses.end)
    for side in sides:
        for laid in tape.on(side).laid.between(start, end):
            yield from (laid.start, laid.end)
