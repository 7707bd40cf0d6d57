"""Runs along a tape, and the sequence that keeps them."""

from bisect import bisect_left
from collections.abc import Iterator, Sequence
from itertools import chain
from typing import Generic, NamedTuple, Protocol, Self, TypeVar

from exercises.tape.work import spend

PAGE = 64  # runs; small enough to copy at every edit, large enough to keep pages few


class Value(Protocol):
    """What a run can hold."""

    def rest(self, frames: int) -> Self:
        """The value that is left when the first ``frames`` frames are gone."""

    def goes_on(self, frames: int, other: Self) -> bool:
        """Whether ``other``, laid after ``frames`` frames of this, makes one run with it."""


V = TypeVar("V", bound=Value)


class Run(NamedTuple, Generic[V]):
    """``[start, end)`` of one track, holding one value."""

    start: int
    end: int
    value: V

    def tail(self, frame: int) -> "Run[V]":
        """What is left of this run from ``frame`` on."""
        if frame <= self.start:
            return self
        return Run(frame, self.end, self.value.rest(frame - self.start))


class Runs(Generic[V]):
    """Maximal runs in order, none overlapping: a value, never changed.

    They lie in pages, so that an edit copies a page and the list of pages, not every
    run on the tape, and the tape from before the edit stays usable. Tuples compare
    item by item, so ``(frame,)`` finds its place among runs, ``((frame,),)`` among pages.
    """

    __slots__ = ("_pages",)

    def __init__(self, pages: tuple[tuple[Run[V], ...], ...] = ()) -> None:
        self._pages = pages

    def __iter__(self) -> Iterator[Run[V]]:
        return chain.from_iterable(self._pages)

    def __len__(self) -> int:
        return sum(map(len, self._pages))

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Runs):
            return NotImplemented
        return tuple(self) == tuple(other)

    def __hash__(self) -> int:
        return hash(tuple(self))

    def __repr__(self) -> str:
        return f"Runs({list(self)!r})"

    def at(self, frame: int) -> Run[V] | None:
        """The run that holds this frame."""
        index = bisect_left(self._pages, ((frame + 1,),)) - 1
        if index < 0:
            return None
        page = self._pages[index]
        run = page[bisect_left(page, (frame + 1,)) - 1]
        return run if frame < run.end else None

    def between(self, start: int, end: int) -> Iterator[Run[V]]:
        """The runs with a frame in ``[start, end)``, whole and in order."""
        first = max(bisect_left(self._pages, ((start + 1,),)) - 1, 0)
        for page in self._pages[first:]:
            for run in page[max(bisect_left(page, (start + 1,)) - 1, 0) :]:
                if run.start >= end:
                    return
                if run.end > start:
                    yield run

    def over(self, start: int, end: int, laid: Sequence[Run[V]]) -> "Runs[V]":
        """These runs with ``[start, end)`` holding ``laid`` and nothing else.

        The runs that only touch the range are looked at too: they may go on into it.
        """
        pages = self._pages
        first = max(bisect_left(pages, ((start,),)) - 1, 0)
        last = bisect_left(pages, ((end + 1,),), first)
        window = pages[first] if last - first == 1 else tuple(chain(*pages[first:last]))
        low = bisect_left(window, (start,))
        if low and window[low - 1].end >= start:
            low -= 1
        high = bisect_left(window, (end + 1,), low)
        spend(1 + 2 * len(laid) + (high - low) // 2 + len(window) // 16)
        middle = _laid_over(window[low:high], start, end, laid)
        return Runs(pages[:first] + _paged(window[:low] + middle + window[high:]) + pages[last:])


def _paged(runs: tuple[Run[V], ...]) -> tuple[tuple[Run[V], ...], ...]:
    if len(runs) <= 2 * PAGE:
        return (runs,) if runs else ()
    return tuple([runs[at : at + PAGE] for at in range(0, len(runs), PAGE)])


def _laid_over(
    touched: tuple[Run[V], ...], start: int, end: int, laid: Sequence[Run[V]]
) -> tuple[Run[V], ...]:
    """What is left of the touched runs before ``start``, the new ones, what is left after."""
    runs = list(laid)
    if touched:
        before, after = touched[0], touched[-1]
        if before.start < start:
            runs.insert(0, Run(before.start, start, before.value))
        if after.end > end:
            runs.append(after.tail(end))
    return tuple(_joined(runs)) if len(runs) > 1 else tuple(runs)


def _joined(runs: list[Run[V]]) -> list[Run[V]]:
    joined = runs[:1]
    for run in runs[1:]:
        held = joined[-1]
        if held.end == run.start and held.value.goes_on(held.end - held.start, run.value):
            joined[-1] = Run(held.start, run.end, held.value)
        else:
            joined.append(run)
    return joined
