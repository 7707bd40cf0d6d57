"""Where what is heard of a take lies."""

from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple


class Span(NamedTuple):
    """``[start, end)`` in frames of the source."""

    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Marks:
    """Words, breaths, noises and room tone of a recording, each kind in order."""

    words: tuple[Span, ...] = ()
    breaths: tuple[Span, ...] = ()
    noises: tuple[Span, ...] = ()
    room_tone: tuple[Span, ...] = ()

    def __post_init__(self) -> None:
        for kind in (self.words, self.breaths, self.noises, self.room_tone):
            orderly = all(span.start < span.end for span in kind)
            if not orderly or any(after.start < before.end for before, after in pairwise(kind)):
                raise ValueError(f"The marks are not in order: {kind}.")


UNMARKED = Marks()
