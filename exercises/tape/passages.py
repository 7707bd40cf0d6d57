"""A tape from one place where it may change to the next: the one place that cuts it up."""

from collections.abc import Collection, Iterable, Iterator
from itertools import chain, pairwise
from typing import NamedTuple, TypeVar

from exercises.tape.runs import Run
from exercises.tape.tape import SIDES, Side, Tape
from exercises.tape.track import Laid, Pulses

V = TypeVar("V", Laid, Pulses)


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
    control = list(tape.control.laid.between(start, end))
    picture, sound = (
        list(tape.on(side).laid.between(start, end)) if side in sides else [] for side in SIDES
    )
    edges = [start, end, *also]
    for pulses in control:
        edges += (pulses.start, min(pulses.start + relock, pulses.end), pulses.end)
    for laid in chain(picture, sound):
        edges += (laid.start, laid.end)
    cuts = sorted({edge for edge in edges if start <= edge <= end})
    held = zip(_holding(control, cuts), _holding(picture, cuts), _holding(sound, cuts), strict=True)
    for (first, last), (run, seen, heard) in zip(pairwise(cuts), held, strict=False):
        rolls = run is not None and first < run.start + relock
        yield Passage(first, last, run, rolls, seen, heard)


def _holding(runs: Iterable[Run[V]], frames: Iterable[int]) -> Iterator[Run[V] | None]:
    """The run, of some in order, that holds each of some frames in order."""
    coming = iter(runs)
    run = next(coming, None)
    for frame in frames:
        while run is not None and run.end <= frame:
            run = next(coming, None)
        yield run if run is not None and run.start <= frame else None
