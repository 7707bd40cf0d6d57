from bisect import bisect_right
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import islice
from operator import attrgetter

from exercises.tape.history import LINED_UP_TAKE, Carried


@dataclass(frozen=True, slots=True)
class Take:
    """One uninterrupted recording, ``[start, end)``: pulses in phase inside it only.

    ``sync`` says that its picture shows what is heard, so that the two belong together.
    """

    start: int
    end: int
    generation: int = 1
    carried: Carried = LINED_UP_TAKE
    sync: bool = False


@dataclass(frozen=True, slots=True)
class Source:
    """A source tape: takes in order, blank tape between them where they don't meet."""

    name: str
    takes: tuple[Take, ...]

    def __post_init__(self) -> None:
        reached = 0
        for take in self.takes:
            if not reached <= take.start < take.end:
                raise ValueError(f"The takes of {self.name!r} are not in order: {take}.")
            reached = take.end

    def take_at(self, frame: int) -> Take | None:
        """The take that holds this frame."""
        index = bisect_right(self.takes, frame, key=attrgetter("start")) - 1
        if index < 0 or self.takes[index].end <= frame:
            return None
        return self.takes[index]

    def run_up(self, frame: int) -> int:
        """Frames from the start of the take that holds ``frame`` up to it; 0 if none does."""
        take = self.take_at(frame)
        return 0 if take is None else frame - take.start

    def takes_in(self, start: int, end: int) -> Iterator[Take]:
        """The takes with a frame in ``[start, end)``, in order."""
        first = max(bisect_right(self.takes, start, key=attrgetter("start")) - 1, 0)
        for take in islice(self.takes, first, None):
            if take.start >= end:
                return
            if take.end > start:
                yield take
