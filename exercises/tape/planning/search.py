"""The cheapest list of recordings, searched with the tape model as judge.

Fewest recordings first: lists of as many recordings as the tape needs at the least are
tried, then of one more, and so on. Among lists of the same length the one that records
the fewest frames wins, and with it the least time at the bench for recording and
checking; among those, the first that is found: from left to right, inserts before
assembles. A list is dropped as soon as what it lacks can't be had with what is left.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field
from operator import itemgetter

from exercises.tape.bench import Bench
from exercises.tape.edit import Assemble, Edit
from exercises.tape.planning.blacks import Blacks
from exercises.tape.planning.bounds import Bounds, Needs
from exercises.tape.planning.guide import Guide, StrokeOrder
from exercises.tape.planning.keeping import harms
from exercises.tape.planning.recordings import Choices, sides_of
from exercises.tape.planning.settling import cuts
from exercises.tape.planning.stand import Stand, stand, stand_after
from exercises.tape.planning.target import Target
from exercises.tape.recording import record
from exercises.tape.tape import Tape
from exercises.tape.work import spend

MOST = 12  # recordings up to which no list goes untried
PATIENCE = 5_000  # tapes looked at before a search no longer tries everything
HASTE = 100  # tapes looked at in each further way of searching, then
FEW = 12  # parts of a brief that is always searched patiently


@dataclass(frozen=True, slots=True)
class SearchStep:
    """A tape on the way, and how it was reached."""

    tape: Tape
    stand: Stand
    edits: tuple[Edit, ...] = ()
    frames: int = 0


@dataclass(frozen=True, slots=True)
class SearchLimits:
    """What a search keeps to; ``frames`` is None for any number of them.

    wider  where assembles may begin and end beside what is wanted
    way    the strokes that it follows
    """

    recordings: int
    frames: int | None
    wider: tuple[int, ...] = ()
    way: StrokeOrder | None = None


@dataclass(slots=True)
class Search:
    """``exact`` tells afterwards whether there is nothing better than what was found."""

    target: Target
    first: int = 0
    best: SearchStep | None = None
    exact: bool = True
    looked_at: int = 0
    start: SearchStep = field(init=False)
    bounds: Bounds = field(init=False)
    cuts: tuple[int, ...] = field(init=False)
    short: bool = False  # whether a list was dropped for want of another recording
    seen: dict[object, tuple[int, int]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.start = SearchStep(self.target.before, stand(self.target, self.target.before))
        self.bounds = Bounds(self.target)
        self.cuts = cuts(self.target)

    def run(self) -> SearchStep | None:
        """The best list of recordings, or None if there is none."""
        needs = self.bounds.needs(self.start.stand, self.start.tape)
        guide = Guide(self.target, self.bounds, self.start.stand)
        fewest = max(needs.recordings, guide.recordings)
        for most in range(fewest, max(MOST, fewest, *guide.ways) + 1):
            self.short = False
            least = self.bounds.frames(self.start.stand, self.start.tape, most, needs)
            if most == guide.recordings:
                least = max(least, guide.frames)
            for limits in self._limits(most, least, guide):
                self._search(limits)
                if self.best and self.best.frames <= least:
                    return self.best
            if self.best or not self.short:
                return self.best
        self.exact = False
        return None

    def _limits(self, most: int, least: int, guide: Guide) -> Iterator[SearchLimits]:
        """By the guide first, if it has a way; then everywhere, ever wider."""
        way = guide.ways.get(most)
        if way and way.frames <= least:
            yield SearchLimits(most, least, way=way)
        if way:
            yield SearchLimits(most, None, way=way)
        for wider in ((), self.cuts):
            if self.best is None:
                yield SearchLimits(most, least, wider)
            yield SearchLimits(most, None, wider)

    def _search(self, limits: SearchLimits) -> None:
        """Depth first; keeps the best."""
        self.seen.clear()
        pending = [iter((self.start,))]
        last = self.looked_at + HASTE
        if self.best is None or len(self.target.parts) <= FEW:
            last = max(last, PATIENCE)
        while pending:
            if self.looked_at > last:
                self.exact = False
                return
            step = next(pending[-1], None)
            if step is None:
                pending.pop()
            elif step.stand.done:
                if self._is_better(step.frames, limits.frames):
                    self.best = step
                    if limits.frames is not None or limits.way:
                        return  # a way's other solutions only differ in their order
            else:
                pending.append(self._from(step, limits))

    def _is_better(self, frames: int, most: int | None) -> bool:
        if most is not None and frames > most:
            return False
        return self.best is None or frames < self.best.frames

    def _from(self, step: SearchStep, limits: SearchLimits) -> Iterator[SearchStep]:
        """The tapes that one more recording leads to, if they can lead to the target."""
        left = limits.recordings - len(step.edits)
        needs = self.bounds.needs(step.stand, step.tape)
        if needs.recordings > left:
            self.short = True
            return
        if limits.way and limits.way.left(step.edits, needs.black) > left:
            return
        least = step.frames + self.bounds.frames(step.stand, step.tape, left, needs)
        if not self._is_better(least, limits.frames) or self._was_seen(step):
            return
        for edit in self._edits(step, needs, left, limits):
            ordered = not _out_of_order(step, edit, self.target.bench)
            if ordered and not harms(self.target, step.tape, edit):
                self.looked_at += 1
                yield self._after(step, edit)

    def _was_seen(self, step: SearchStep) -> bool:
        """Whether the same tape was reached before, and as cheaply."""
        key, cost = _look(step), (len(step.edits), step.frames)
        former = self.seen.get(key)
        if former and former[0] <= cost[0] and former[1] <= cost[1]:
            return True
        self.seen[key] = cost
        return False

    def _edits(
        self, step: SearchStep, needs: Needs, left: int, limits: SearchLimits
    ) -> Iterator[Edit]:
        """What records nothing in vain first, then black, then the rest."""
        wasteful: list[tuple[int, Edit]] = []
        if limits.way:
            yield from limits.way.edits(step.tape, step.edits)
        else:
            spare = left - needs.black - needs.strands
            self.short |= spare == 0
            choices = Choices(self.target, step.tape, step.stand, spare, limits.wider, self.cuts)
            for least, edit in choices:
                if edit.out - edit.in_ > least:
                    wasteful.append((edit.out - edit.in_ - least, edit))
                else:
                    yield edit
        if needs.black or (left > needs.recordings and not limits.way):
            needed = tuple(self.bounds.black_ranges(step.stand, step.tape))
            yield from Blacks(self.target, step.tape, step.stand, needed, limits.wider)
        yield from (edit for _, edit in sorted(wasteful, key=itemgetter(0)))

    def _after(self, step: SearchStep, edit: Edit) -> SearchStep:
        spend(2 * len(self.target.parts))
        tape = record(step.tape, edit, self.target.bench, self.first + len(step.edits))
        lacks = stand_after(self.target, step.stand, edit, tape)
        return SearchStep(tape, lacks, (*step.edits, edit), step.frames + edit.out - edit.in_)


def _out_of_order(step: SearchStep, edit: Edit, bench: Bench) -> bool:
    """Of two recordings that can change places, the left one comes first."""
    if not step.edits:
        return False
    last = step.edits[-1]
    if isinstance(edit, Assemble):
        return edit.end + bench.erase_gap + bench.lock <= last.at
    if edit.end <= last.at:
        return True
    meet = last.at < edit.end and edit.at < last.end
    if isinstance(last, Assemble) or (meet and set(sides_of(last)) & set(sides_of(edit))):
        return False
    return (edit.at, "picture" in sides_of(last)) < (last.at, "picture" in sides_of(edit))


def _look(step: SearchStep) -> object:
    """What two ways to the same tape, and to the same order of what follows, have in common."""
    last, tape = step.edits[-1] if step.edits else None, step.tape
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
        (type(last), last.at, last.end, sides_of(last)) if last else None,
    )
