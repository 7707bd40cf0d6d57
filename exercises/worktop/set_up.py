"""A practical laid out at somebody's bench: in frames, with the figures of its machines."""

from collections.abc import Mapping
from dataclasses import asdict, dataclass
from functools import cached_property
from typing import Any

from exercises.drills.asks import Json
from exercises.tape import Bench, EditSession, Tape, read_edit_session


@dataclass(frozen=True, slots=True, kw_only=True)
class LoggedTake:
    """A take as the shot log has it: `[start, end)` on its tape, the action from `action` on."""

    name: str
    start: int
    action: int
    end: int
    shows: str
    log: str
    lines: tuple[str, ...] = ()


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
    white: int
    sound: int

    def take_at(self, frame: int) -> LoggedTake | None:
        return next((take for take in self.takes if take.start <= frame < take.end), None)


@dataclass(frozen=True)
class SetUp:
    """What lies ready before the first action: plain values, kept with a run of the practical.

    `document` is a session document (`tape/SESSION.md`) with the brief and the edits that were made
    before; `pre_roll` and `post_roll` are in frames, `left` is how the controls were left.
    """

    document: Json
    tapes: tuple[ShelfTape, ...]
    pre_roll: int
    post_roll: int
    left: Json
    minutes: int
    unaided: bool

    @cached_property
    def session(self) -> EditSession:
        """Before the first action."""
        return read_edit_session(self.document)

    @cached_property
    def master(self) -> Tape:
        """The edit master before the first action."""
        return self.session.recorded()

    @property
    def bench(self) -> Bench:
        return self.session.bench

    @property
    def master_length(self) -> int:
        length: int = self.document["master"]["length"]
        return length

    @cached_property
    def by_name(self) -> Mapping[str, ShelfTape]:
        return {tape.name: tape for tape in self.tapes}

    def as_json(self) -> Json:
        return {**{name: getattr(self, name) for name in self.__dataclass_fields__}} | {
            "tapes": [asdict(tape) for tape in self.tapes]
        }

    @classmethod
    def from_json(cls, kept: Json) -> "SetUp":
        return cls(**{**kept, "tapes": tuple(map(_tape, kept["tapes"]))})


def _tape(kept: dict[str, Any]) -> ShelfTape:
    takes = (LoggedTake(**{**each, "lines": tuple(each["lines"])}) for each in kept["takes"])
    return ShelfTape(**{**kept, "takes": tuple(takes)})
