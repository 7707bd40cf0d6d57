"""The cheapest list of recordings, searched with the tape model as judge.

Fewest recordings first: lists of as many recordings as the tape needs at the least are
tried, then of one more, and so on. Among lists of the same length the one that records
the fewest frames wins, and with it the least time at the bench for recording and
checking; among those, the first that is found: from left to right, inserts before
assembles. A list is dropped as soon as what it lacks can't be had with what is left.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import product
from operator import itemgetter

from exercises.tape.edit import Edit, Insert
from exercises.tape.planning.blacks import Blacks
from exercises.tape.planning.bounds import Bounds, Needs
from exercises.tape.planning.keeping import harms
from exercises.tape.planning.recordings import Choices, sides_of
from exercises.tape.planning.settling import cuts
from exercises.tape.planning.stand import Stand, stand, stand_after
from exercises.tape.planning.target import Target
from exercises.tape.recording import record
from exercises.tape.tape import Tape

MOST = 12  # recordings up to which no list goes untried
PATIENCE = 20_000  # tapes looked at before a search gives up


@dataclass(frozen=True, slots=True)
class Step:
    """A tape on the way, and how it was reached."""

    tape: Tape
    stand: Stand
    edits: tuple[Edit, ...] = ()
    frames: int = 0


@dataclass(slots=True)
class Search:
    """``exact`` tells afterwards whether there is nothing better than what was found."""

    target: Target
    first: int = 0
    best: Step | None = None
    exact: bool = True
    looked_at: int = 0
    bounds: Bounds = field(init=False)
    cuts: tuple[int, ...] = field(init=False)
    short: bool = False  # whether a list was dropped for want of another recording
    seen: dict[object, tuple[int, int]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.bounds = Bounds(self.target)
        self.cuts = cuts(self.target)

    def run(self) -> Step | None:
        """The best list of recordings, or None if there is none."""
        start = Step(self.target.before, stand(self.target, self.target.before))
        needs = self.bounds.needs(start.stand, start.tape)
        for most in range(needs.recordings, max(MOST, needs.recordings) + 1):
            self.short = False
            least = self.bounds.frames(start.stand, start.tape, most, needs)
            for wider, frames in product(((), self.cuts), (least, None)):
                self._search(start, most, frames, wider)
                if self.looked_at > PATIENCE:
                    self.exact = False
                    return self.best
                if self.best and self.best.frames <= least:
                    return self.best
            if self.best or not self.short:
                return self.best
        self.exact = False
        return None

    def _search(self, start: Step, most: int, frames: int | None, wider: tuple[int, ...]) -> None:
        """Depth first, for lists of so many recordings and frames; keeps the best."""
        self.seen.clear()
        pending = [iter((start,))]
        while pending and self.looked_at <= PATIENCE:
            step = next(pending[-1], None)
            if step is None:
                pending.pop()
            elif step.stand.done:
                if self._is_better(step.frames, frames):
                    self.best = step
                    if frames is not None:
                        return
            else:
                pending.append(self._from(step, most, frames, wider))

    def _is_better(self, frames: int, most: int | None) -> bool:
        if most is not None and frames > most:
            return False
        return self.best is None or frames < self.best.frames

    def _from(
        self, step: Step, most: int, frames: int | None, wider: tuple[int, ...]
    ) -> Iterator[Step]:
        """The tapes that one more recording leads to, if they can lead to the target."""
        left = most - len(step.edits)
        needs = self.bounds.needs(step.stand, step.tape)
        if needs.recordings > left:
            self.short = True
            return
        least = step.frames + self.bounds.frames(step.stand, step.tape, left, needs)
        if not self._is_better(least, frames) or self._was_seen(step):
            return
        for edit in self._edits(step, needs, left, wider):
            if not _out_of_order(step, edit) and not harms(self.target, step.tape, edit):
                self.looked_at += 1
                yield self._after(step, edit)

    def _was_seen(self, step: Step) -> bool:
        """Whether the same tape was reached before, and as cheaply."""
        key, cost = _look(step), (len(step.edits), step.frames)
        former = self.seen.get(key)
        if former and former[0] <= cost[0] and former[1] <= cost[1]:
            return True
        self.seen[key] = cost
        return False

    def _edits(self, step: Step, needs: Needs, left: int, wider: tuple[int, ...]) -> Iterator[Edit]:
        """What records nothing in vain first, then black, then the rest."""
        spare = left - needs.black - needs.strands
        self.short |= spare == 0
        wasteful: list[tuple[int, Edit]] = []
        for least, edit in Choices(self.target, step.tape, step.stand, spare, wider, self.cuts):
            if edit.out - edit.in_ > least:
                wasteful.append((edit.out - edit.in_ - least, edit))
            else:
                yield edit
        if needs.black or left > needs.recordings:
            yield from Blacks(self.target, step.tape, step.stand, wider)
        yield from (edit for _, edit in sorted(wasteful, key=itemgetter(0)))

    def _after(self, step: Step, edit: Edit) -> Step:
        tape = record(step.tape, edit, self.target.bench, self.first + len(step.edits))
        lacks = stand_after(self.target, step.stand, edit, tape)
        return Step(tape, lacks, (*step.edits, edit), step.frames + edit.out - edit.in_)


def _out_of_order(step: Step, edit: Edit) -> bool:
    """Of two inserts that don't meet it doesn't matter which is first: it is the left one."""
    if not step.edits:
        return False
    last = step.edits[-1]
    if not isinstance(last, Insert) or not isinstance(edit, Insert):
        return False
    meet = last.at < edit.end and edit.at < last.end
    if meet and set(sides_of(last)) & set(sides_of(edit)):
        return False
    return (edit.at, edit.sound) < (last.at, last.sound)


def _look(step: Step) -> object:
    """What two ways to the same tape, and to the same order of what follows, have in common."""
    last = step.edits[-1] if step.edits and isinstance(step.edits[-1], Insert) else None
    tape = step.tape
    return (
        tuple(run[:2] for run in tape.control.laid),
        tuple(
            (*run[:2], run.value.source, run.value.frame, run.value.settled)
            for run in tape.picture.laid
        ),
        tuple(
            (*run[:2], run.value.source, run.value.frame, run.value.settled)
            for run in tape.sound.laid
        ),
        (last.at, last.end, last.picture, last.sound) if last else None,
    )
