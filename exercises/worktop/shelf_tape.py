"""A cassette on the shelf, in frames: what is on it, and what the shot log says of it."""

from dataclasses import dataclass
from typing import Any, Self


@dataclass(frozen=True, slots=True, kw_only=True)
class LogPlaces:
    """Where the shot log has a take, right or wrong, in frames of its tape."""

    start: int
    action: int
    end: int


@dataclass(frozen=True, slots=True, kw_only=True)
class LoggedTake:
    """A take: `[start, end)` on its tape, the action from `action` on.

    `white` in IRE and `sound` in 0.1 dB over line-up are its levels. `log` and `logged` are what
    the shot log says: whoever has not played the tape knows no more.
    """

    name: str
    start: int
    action: int
    end: int
    shows: str
    log: str
    logged: LogPlaces
    white: int
    sound: int
    lines: tuple[str, ...] = ()

    @classmethod
    def from_json(cls, kept: dict[str, Any]) -> Self:
        logged = LogPlaces(**kept["logged"])
        return cls(**{**kept, "lines": tuple(kept["lines"]), "logged": logged})


@dataclass(frozen=True, slots=True, kw_only=True)
class ShelfTape:
    """A source tape in its case: `length` in frames; figures as in `PracticalTape`."""

    name: str
    length: int
    takes: tuple[LoggedTake, ...]
    tracking: int
    skew: int
    reel: int
    signal: int

    def take_at(self, frame: int) -> LoggedTake | None:
        return next((take for take in self.takes if take.start <= frame < take.end), None)

    @classmethod
    def from_json(cls, kept: dict[str, Any]) -> Self:
        return cls(**{**kept, "takes": tuple(map(LoggedTake.from_json, kept["takes"]))})
