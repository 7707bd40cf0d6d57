"""The fewest of some recordings on offer, by whatever rules a tape is taken to be recorded by.

`plan` finds recordings; this only chooses among those that somebody offers, in the order in
which they prefer them. How a tape is recorded and what is wrong with it are parameters, so that
what a believer would choose is found as well as what is right.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import product
from typing import Generic, TypeVar

from exercises.tape.edit import Edit
from exercises.tape.judging.brief import Wanted
from exercises.tape.planning.stand import lays
from exercises.tape.tape import Tape
from exercises.tape.work import spend

R = TypeVar("R")


@dataclass(frozen=True, slots=True)
class Offered(Generic[R]):
    """Recordings to choose from, for one thing that a tape may become.

    recordings  each with the frame where it begins; those that are preferred come first
    after       a tape after one more recording
    wrong       the first frame of a tape that is not as it should be; None where all is
    """

    recordings: Sequence[tuple[int, R]]
    after: Callable[[Tape, R], Tape]
    wrong: Callable[[Tape], int | None]


class Reached(Generic[R]):
    """A tape that some of what is offered leads to; whatever follows is recorded once."""

    def __init__(self, tape: Tape, offered: Offered[R]) -> None:
        self.tape, self.offered = tape, offered
        self._then: dict[int, Reached[R]] = {}

    @cached_property
    def wrong(self) -> int | None:
        return self.offered.wrong(self.tape)

    def ways(self, count: int, beyond: int = -1) -> Iterator[tuple[R, ...]]:
        """Every way with so many recordings, each further along than the one before.

        No recording mends what lies before it: each begins where the first thing is wrong,
        or earlier.
        """
        if count == 0 or self.wrong is None:
            yield from [()] if count == 0 and self.wrong is None else []
            return
        for number, (at, recording) in enumerate(self.offered.recordings):
            if beyond < at <= self.wrong:
                spend()
                for rest in self._after(number).ways(count - 1, at):
                    yield (recording, *rest)

    def _after(self, number: int) -> "Reached[R]":
        if number not in self._then:
            tape = self.offered.after(self.tape, self.offered.recordings[number][1])
            self._then[number] = Reached(tape, self.offered)
        return self._then[number]


def fewest(tape: Tape, offers: Sequence[Offered[R]], most: int) -> tuple[R, ...] | None:
    """As few recordings as will do, up to `most`, for any of what is offered; None if none do."""
    tries = product(range(1, most + 1), [Reached(tape, offered) for offered in offers])
    return next((way for count, reached in tries for way in reached.ways(count)), None)


def lays_nothing_else(edit: Edit, wanted: Iterable[Wanted]) -> bool:
    """Whether the edit lays what is wanted, wherever something is wanted on its tracks."""
    return all(
        (shot.source, shot.shift) == (edit.source.name, edit.at - edit.in_)
        for shot in wanted
        if shot.at < edit.end and edit.at < shot.end and lays(edit, shot.track)
    )
