"""Runs along a tape, and the sequence that keeps them."""

from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from itertools import chain
from typing import ClassVar, Generic, NamedTuple, Protocol, Self, TypeVar

PAGE = 64  # runs; small enough to copy at every edit, large enough to keep pages few


class Value(Protocol):
    """What a run can hold."""

    joins: ClassVar[bool]  # whether neighbours that continue each other are one run

    def rest(self, frames: int) -> Self:
        """The value that is left when the first ``frames`` frames are gone."""


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

    def runs_on_into(self, other: "Run[V]") -> bool:
        return (
            self.end == other.start
            and self.value.joins
            and self.value.rest(self.end - self.start) == other.value
        )


class Runs(Generic[V]):
    """Maximal runs in order, none overlapping: a value, never changed.

    They lie in pages, so that an edit copies a page and the list of pages, not every
    run on the tape, and the tape from before the edit stays usable.
    """

    __slots__ = ("_firsts", "_pages")

    def __init__(self, pages: tuple[tuple[Run[V], ...], ...] = ()) -> None:
        self._pages = pages
        self._firsts = tuple([page[0].start for page in pages])

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
        index = bisect_right(self._firsts, frame) - 1
        if index < 0:
            return None
        page = self._pages[index]
        run = page[bisect_left(page, (frame + 1,)) - 1]
        return run if frame < run.end else None

    def over(self, start: int, end: int, laid: Sequence[Run[V]]) -> "Runs[V]":
        """These runs with ``[start, end)`` holding ``laid`` and nothing else."""
        first = max(bisect_left(self._firsts, start) - 1, 0)
        last = bisect_right(self._firsts, end, lo=first)
        window = tuple(chain.from_iterable(self._pages[first:last]))
        low = bisect_left(window, (start,))
        if low and window[low - 1].end >= start:
            low -= 1
        high = bisect_left(window, (end + 1,), lo=low)
        middle = _joined(_laid_over(window[low:high], start, end, laid))
        return self._with_pages(first, last, (*window[:low], *middle, *window[high:]))

    def _with_pages(self, first: int, last: int, window: tuple[Run[V], ...]) -> "Runs[V]":
        size = PAGE if len(window) > 2 * PAGE else 2 * PAGE
        pages = tuple([window[at : at + size] for at in range(0, len(window), size)])
        made: Runs[V] = object.__new__(Runs)
        made._pages = self._pages[:first] + pages + self._pages[last:]
        firsts = tuple([page[0].start for page in pages])
        made._firsts = self._firsts[:first] + firsts + self._firsts[last:]
        return made


def _laid_over(
    touched: tuple[Run[V], ...], start: int, end: int, laid: Sequence[Run[V]]
) -> Iterator[Run[V]]:
    """What is left of the touched runs before ``start``, the new ones, what is left after."""
    if touched and touched[0].start < start:
        yield Run(touched[0].start, start, touched[0].value)
    yield from laid
    if touched and touched[-1].end > end:
        yield touched[-1].tail(end)


def _joined(runs: Iterator[Run[V]]) -> list[Run[V]]:
    joined: list[Run[V]] = []
    for run in runs:
        if joined and joined[-1].runs_on_into(run):
            joined[-1] = Run(joined[-1].start, run.end, joined[-1].value)
        else:
            joined.append(run)
    return joined
