"""A track as it lies between two frames, blank tape included."""

from collections.abc import Iterator
from typing import Generic, NamedTuple, TypeVar

from exercises.tape.runs import Run, Runs, Value
from exercises.tape.work import spend

V = TypeVar("V", bound=Value)


class Stretch(NamedTuple, Generic[V]):
    """``[start, end)`` of one run, or of blank tape where ``run`` is None."""

    start: int
    end: int
    run: Run[V] | None

    @property
    def value(self) -> V | None:
        """What it holds, from its first frame on."""
        return None if self.run is None else self.run.tail(self.start).value


def stretches(runs: Runs[V], start: int, end: int) -> Iterator[Stretch[V]]:
    """The runs and the blanks between them, in order, that cover ``[start, end)``."""
    at = start
    for run in runs.between(start, end):
        spend(4)
        if run.start > at:
            yield Stretch(at, run.start, None)
            at = run.start
        stop = min(run.end, end)
        yield Stretch(at, stop, run)
        at = stop
    if at < end:
        yield Stretch(at, end, None)


def side_by_side(
    before: Runs[V], after: Runs[V], start: int, end: int
) -> Iterator[tuple[Stretch[V], Stretch[V]]]:
    """Two tracks over the same frames, cut wherever either of them changes."""
    befores, afters = stretches(before, start, end), stretches(after, start, end)
    old, new = next(befores, None), next(afters, None)
    while old and new:
        first, last = max(old.start, new.start), min(old.end, new.end)
        yield Stretch(first, last, old.run), Stretch(first, last, new.run)
        if old.end == last:
            old = next(befores, None)
        if new.end == last:
            new = next(afters, None)
