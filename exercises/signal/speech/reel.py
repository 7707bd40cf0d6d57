"""Lines one after another on a tape, with pauses between them: a sound, and its marks."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from itertools import accumulate

import numpy as np

from exercises.signal.sound.samples import BLOCK, Samples
from exercises.signal.speech.line import Line, LineStretch, Word, lines
from exercises.tape.marks import Marks, Span
from exercises.tape.rate import Rate


@dataclass(frozen=True, slots=True)
class Placed:
    """A line, begun so many ms into the reel."""

    at: int
    line: Line

    @property
    def end(self) -> int:
        return self.at + self.line.length


@dataclass(frozen=True, slots=True)
class Reel:
    """A ``Sound``; in ms from its start."""

    placed: tuple[Placed, ...]

    @property
    def words(self) -> list[Word]:
        return [word.later(each.at) for each in self.placed for word in each.line.words]

    @property
    def breaths(self) -> list[LineStretch]:
        return [breath.later(each.at) for each in self.placed for breath in each.line.breaths]

    def read(self, start: int, count: int) -> Samples:
        heard = np.zeros(count, np.float32)
        for each in self.placed:
            samples, at = each.line.samples, each.at * BLOCK - start
            first, last = max(at, 0), min(at + len(samples), count)
            if first < last:
                heard[first:last] += samples[first - at : last - at]
        return heard

    def marks(self, rate: Rate) -> Marks:
        """The same in frames, each end at the frame nearest to it."""
        return Marks(
            words=_spans((word.heard for word in self.words), rate),
            breaths=_spans(self.breaths, rate),
        )


def reel(*names: str, begin: int = 0, pause: int = 600) -> Reel:
    """Lines by name, the first after ``begin`` ms, the others ``pause`` ms after one another."""
    chosen = [lines()[name] for name in names]
    starts = accumulate((line.length + pause for line in chosen), initial=begin)
    return Reel(tuple(Placed(at, line) for at, line in zip(starts, chosen, strict=False)))


def _spans(stretches: Iterable[LineStretch], rate: Rate) -> tuple[Span, ...]:
    return tuple(_in_frames(stretches, rate))


def _in_frames(stretches: Iterable[LineStretch], rate: Rate) -> Iterator[Span]:
    """None overlaps the one before it or is empty, though what is short may move by a frame."""
    reached = 0
    for start, end in stretches:
        first = max(reached, _nearest(start, rate))
        reached = max(first + 1, _nearest(end, rate))
        yield Span(first, reached)


@cache
def _nearest(at: int, rate: Rate) -> int:
    """The frame nearest to so many ms."""
    return round(at * rate.fraction / 1000)
