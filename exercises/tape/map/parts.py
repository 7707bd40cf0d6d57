"""The parts of a tape map. ``left`` and ``width`` are drawing units, not time: percent of
the map's width, to three places. Everything else is in frames, or words.
"""

from dataclasses import dataclass
from typing import Any, TypeVar

from exercises.tape.tape import TrackName

Part = TypeVar("Part")


@dataclass(frozen=True, slots=True, kw_only=True)
class Segment:
    """A run, or as much of it as the map's window shows.

    ``label`` is what to write on it: the name of its source tape, or ``pulses``. Pulses
    have no source, frame, generation or settled. ``source_at`` is the time code of the
    source frame; ``jump`` says that the phase jumps at the segment's start.
    """

    left: float
    width: float
    start: int
    end: int
    starts: str
    ends: str
    label: str
    source: str | None = None
    frame: int | None = None
    source_at: str | None = None
    generation: int | None = None
    settled: bool | None = None
    jump: bool = False

    def described(self) -> str:
        where = f"{self.label} from {self.starts} to {self.ends}"
        if self.source is None:
            return where
        loose = "" if self.settled else ", not settled"
        return f"{where} (its {self.source_at} on, generation {self.generation}{loose})"


@dataclass(frozen=True, slots=True)
class Lane:
    """One track of the map."""

    track: TrackName
    segments: tuple[Segment, ...]

    def described(self) -> str:
        name = f"{self.track.capitalize()} track"
        if not self.segments:
            return f"{name}: {'no pulses' if self.track == 'control' else 'blank'}."
        runs = "; ".join(segment.described() for segment in self.segments)
        jumps = [segment.starts for segment in self.segments if segment.jump]
        return f"{name}: {runs}." + (f" The phase jumps at {_listed(jumps)}." if jumps else "")

    @classmethod
    def from_json(cls, kept: list[Any]) -> "Lane":
        track, segments = kept
        return cls(track, tuple(of_row(Segment, segment) for segment in segments))

    def as_json(self) -> list[Any]:
        return [self.track, [row(segment) for segment in self.segments]]


@dataclass(frozen=True, slots=True, kw_only=True)
class FaultMark:
    """A stretch that does not play cleanly: the state, and the index of the edit that caused it.

    ``label`` is a few words to write beneath the lanes, ``sentence`` the whole of it.
    """

    left: float
    width: float
    start: int
    end: int
    starts: str
    ends: str
    state: str
    edit: int | None
    label: str
    sentence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """A place with a name, such as an edit in; a tick of the ruler is named by its time code."""

    left: float
    frame: int
    at: str
    name: str


def _listed(words: list[str]) -> str:
    return words[0] if len(words) == 1 else ", ".join(words[:-1]) + f" and {words[-1]}"


def row(part: Any) -> list[Any]:
    """A part as JSON keeps it: its values in the order of its fields.

    Without their names a map is half as long, and three or four are kept with an answer.
    """
    return [getattr(part, name) for name in part.__slots__]


def of_row(part: type[Part], kept: list[Any]) -> Part:
    return part(**dict(zip(part.__slots__, kept, strict=True)))  # type: ignore[attr-defined]
