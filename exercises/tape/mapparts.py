"""The parts of a tape map. ``left`` and ``width`` are drawing units, not time: percent of
the map's width, to three places. Everything else is in frames, or words.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from exercises.tape.tape import TrackName


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
    def from_json(cls, kept: Mapping[str, Any]) -> "Lane":
        return cls(kept["track"], tuple(Segment(**segment) for segment in kept["segments"]))


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


def plain(value: Any) -> Any:
    """Dataclasses as dicts and tuples as lists, all the way down, as JSON has them.

    `dataclasses.asdict` copies every leaf; an answer's page makes three or four maps.
    """
    if isinstance(value, tuple):
        return [plain(each) for each in value]
    if hasattr(value, "__slots__") and not isinstance(value, str):
        return {name: plain(getattr(value, name)) for name in value.__slots__}
    return value
