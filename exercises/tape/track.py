"""A track: what lies along it, and which edit was there last."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Generic, Self, TypeVar

from exercises.tape.history import PLAINLY, History
from exercises.tape.runs import Run, Runs


@dataclass(frozen=True, slots=True)
class Laid:
    """What a picture or sound run holds: ``frame`` is the source frame at its start.

    ``made`` is how it was recorded; runs that differ in it stay two.
    """

    source: str
    frame: int
    generation: int
    settled: bool
    made: History = PLAINLY

    def rest(self, frames: int) -> "Laid":
        return Laid(self.source, self.frame + frames, self.generation, self.settled, self.made)

    def goes_on(self, frames: int, other: "Laid") -> bool:
        return other.frame == self.frame + frames and other == self.rest(frames)


@dataclass(frozen=True, slots=True)
class Pulses:
    """What a control run holds: pulses in phase from its start to its end.

    Neighbours stay two runs: where one ends and the next begins, the phase jumps.
    """

    def rest(self, frames: int) -> Self:
        return self

    def goes_on(self, frames: int, other: Self) -> bool:
        return False


@dataclass(frozen=True, slots=True)
class Cause:
    """The edit, by its index in the session, that last recorded or wiped a frame."""

    edit: int

    def rest(self, frames: int) -> Self:
        return self

    def goes_on(self, frames: int, other: Self) -> bool:
        return self.edit == other.edit


PULSES = Pulses()

V = TypeVar("V", Laid, Pulses)


@dataclass(frozen=True, slots=True)
class Track(Generic[V]):
    """One track along the tape; a frame in no run is blank."""

    laid: Runs[V] = field(default_factory=Runs)
    causes: Runs[Cause] = field(default_factory=Runs)

    @property
    def runs(self) -> tuple[Run[V], ...]:
        """The maximal runs, in order."""
        return tuple(self.laid)

    def at(self, frame: int) -> Run[V] | None:
        """The run that holds this frame, or None where the track is blank."""
        return self.laid.at(frame)

    def within(self, start: int, end: int) -> list[Run[V]]:
        """What it holds in ``[start, end)``: runs cut to that."""
        return [
            run.tail(start)._replace(end=min(run.end, end)) for run in self.laid.between(start, end)
        ]

    def runs_across(self, frame: int) -> bool:
        """Whether one run goes on across a frame's start."""
        run = self.at(frame)
        return run is not None and run.start < frame

    def cause(self, frame: int) -> int | None:
        """The last edit that recorded or wiped this frame; None where none did."""
        run = self.causes.at(frame)
        return None if run is None else run.value.edit

    def over(
        self, start: int, end: int, laid: Sequence[Run[V]], *, cause: int | None
    ) -> "Track[V]":
        """This track with ``[start, end)`` holding ``laid`` and nothing else.

        The first run laid may begin before ``start``, to run on from what is there; the
        frames before ``start`` keep their cause.
        """
        begin = min(start, laid[0].start) if laid else start
        causes = [] if cause is None else [Run(start, end, Cause(cause))]
        return Track(self.laid.over(begin, end, laid), self.causes.over(start, end, causes))
