"""A master played back next to the film as it was meant, and what is wrong with it."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from itertools import chain

from exercises.drills.kinds.spot_the_bad_edit.wear import Wear, dropping_out
from exercises.tape import SIDES, Bench, Condition, Laid, Run, Side, Tape, Track, play
from exercises.tape.by_hand import with_runs
from exercises.tape.judging import TROUBLES, Demand, Trouble, misses
from exercises.tape.passages import passages
from exercises.tape.playback import condition_of


class FilmFault(StrEnum):
    """What can be wrong with a stretch of the film, worst first.

    It is the judge's own trouble, and wear, which the tape model knows nothing of.
    """

    NO_PULSES = Trouble.NO_PULSES.value
    ROLL = Trouble.ROLL.value
    BLANK = Trouble.BLANK.value
    UNSETTLED = Trouble.UNSETTLED.value
    OVER = "over"
    WORN = "worn"


WORST_FIRST = tuple(FilmFault)


@dataclass(frozen=True, slots=True)
class FaultyStretch:
    """`[start, end)` of the film with one fault; `tracks` where it is about one of them."""

    fault: FilmFault
    start: int
    end: int
    tracks: tuple[Side, ...] = ()


@dataclass(frozen=True, slots=True)
class FilmSoFar:
    """A master after some edits; `meant` holds what should be there by then.

    The film is `[start, end)`, from the first edit to the end of the last. `worn` are places
    that drop out.
    """

    tape: Tape
    meant: Tape
    bench: Bench
    start: int
    end: int
    worn: tuple[Wear, ...] = ()

    def faults(self) -> tuple[FaultyStretch, ...]:
        """What playback shows within the film, and what plays there but was not meant."""
        found = (*self._played(), *self._replaced(), *self._dropping_out())
        return tuple(sorted(found, key=lambda stretch: (stretch.start, stretch.end)))

    def plays_as_meant(self) -> bool:
        wrong = chain(self._replaced(), self._dropping_out())
        return self._plays_cleanly() and next(wrong, None) is None

    def _plays_cleanly(self) -> bool:
        """Whether `_played` finds nothing, without asking which edit it would be."""
        tape, relock = self._where_meant(), self.bench.relock
        along = passages(tape, self.start, self.end, relock=relock)
        return all(condition_of(passage) is Condition.CLEAN for passage in along)

    def _played(self) -> Iterator[FaultyStretch]:
        for state in play(self._where_meant(), self.bench):
            start, end = max(state.start, self.start), min(state.end, self.end)
            trouble = TROUBLES[state.state]
            if trouble and start < end:
                yield FaultyStretch(FilmFault(trouble.value), start, end)

    def _replaced(self) -> Iterator[FaultyStretch]:
        for miss in misses(wanted(self.meant), self.tape, self.bench):
            if miss.trouble is Trouble.OTHER:
                yield FaultyStretch(FilmFault.OVER, miss.start, miss.end, (miss.want.track,))

    def _dropping_out(self) -> Iterator[FaultyStretch]:
        for first, last, track in dropping_out(self.tape, self.worn):
            start, end = max(first, self.start), min(last, self.end)
            if start < end:
                yield FaultyStretch(FilmFault.WORN, start, end, (track,))

    def _where_meant(self) -> Tape:
        """The tape with something on each track wherever the film asks nothing of it."""
        tape = self.tape
        for track in SIDES:
            for start, end in unmeant(self.meant.on(track), self.start, self.end):
                tape = with_runs(tape, (track,), start, end, [Run(start, end, ANYTHING)])
        return tape


ANYTHING = Laid("anything", 0, 1, settled=True)


def unmeant(track: Track[Laid], start: int, end: int) -> Iterator[tuple[int, int]]:
    """The stretches of `[start, end)` where a track holds nothing."""
    reached = start
    for run in track.runs:
        if reached < run.start:
            yield reached, run.start
        reached = run.end
    if reached < end:
        yield reached, end


def wanted(meant: Tape) -> Iterator[Demand]:
    """All that lies on a tape, as wants."""
    for track in SIDES:
        for run in meant.on(track).runs:
            laid = run.value
            yield Demand.over(track, run.start, run.end, laid.source, laid.frame)
