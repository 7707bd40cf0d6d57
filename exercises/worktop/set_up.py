"""A practical laid out at somebody's bench: in frames, with the figures of its machines."""

from collections.abc import Mapping
from dataclasses import asdict, dataclass
from functools import cached_property

from exercises.drills.asks import Json
from exercises.tape import Bench, EditSession, Tape, read_edit_session
from exercises.worktop.shelf_tape import ShelfTape


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetRow:
    """A line of the edit sheet, written from the shot log: in frames, half-open.

    `track` is "both", "picture" or "sound"; `shows` is what the log says of the take, `says` the
    words of a wanted line.
    """

    tape: str
    take: str
    track: str
    source_in: int
    source_out: int
    master_in: int
    shows: str
    says: str


@dataclass(frozen=True)
class SetUp:
    """What lies ready before the first action: plain values, kept with a run of the practical.

    `document` is a session document (`tape/SESSION.md`) with the brief and the edits that were made
    before; `pre_roll` and `post_roll` are in frames, `left` is how the controls were left.
    The `sheet` is what the learner works from; the brief, which judges, may know better.
    """

    document: Json
    tapes: tuple[ShelfTape, ...]
    sheet: tuple[SheetRow, ...]
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
            "tapes": [asdict(tape) for tape in self.tapes],
            "sheet": [asdict(row) for row in self.sheet],
        }

    @classmethod
    def from_json(cls, kept: Json) -> "SetUp":
        tapes = tuple(map(ShelfTape.from_json, kept["tapes"]))
        sheet = tuple(SheetRow(**row) for row in kept["sheet"])
        return cls(**{**kept, "tapes": tapes, "sheet": sheet})
