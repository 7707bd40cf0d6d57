"""The worktop: how everything on a practice bench stands at one moment, as plain values.

    Worktop
     ├── PlayerStand     the player: cassette, place, tracking, skew
     ├── RecorderStand   the recorder: cassette, place, tracking, mode, levels, what is shown
     ├── EditMarks       source in, source out, master in
     └── edits           what was recorded so far, as a session document has it

An action makes another worktop; the tape is what the tape model makes of the edits.
"""

from dataclasses import asdict, dataclass, field, replace
from typing import Any, Self

from exercises.drills.asks import Json
from exercises.tape import EditSession, SoundMode, Tape, read_edit_session, record
from exercises.tape.from_json.document_value import DocumentValue
from exercises.tape.from_json.edits import read_edit
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf_tape import ShelfTape

STEP_TRACKING = 5  # percent of a track that one position of a tracking control is
STEP_SKEW = 2  # 0.1 µs that one position of the skew control is
REEL = 600  # seconds in which tracking moves by what is told of a reel
KEPT = ("clock", "done", "running", "rehearsed", "looked_back", "tracked", "metered", "handed_in")
FURTHEST = 20  # positions that a control goes, either way


@dataclass(frozen=True, slots=True, kw_only=True)
class PlayerStand:
    """`tape` is None while it is empty; `at` is where the tape stands, in frames."""

    tape: str | None = None
    at: int = 0
    tracking: int = 0
    skew: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class RecorderStand:
    """`mode` is "assemble" or "insert"; `picture` and `sound` are the tracks of an insert.

    `picture_gain` None leaves the picture level to the machine. `shows` is "input" or "tape".
    """

    tape: str | None = None
    at: int = 0
    tracking: int = 0
    mode: str = "assemble"
    picture: bool = True
    sound: bool = True
    picture_gain: int | None = None
    sound_mode: str = SoundMode.BY_HAND
    sound_gain: int = 0
    shows: str = "input"


@dataclass(frozen=True, slots=True, kw_only=True)
class EditMarks:
    """In frames; None where nothing is marked. Marks of a source go with its cassette."""

    source_in: int | None = None
    source_out: int | None = None
    master_in: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Worktop:
    """`clock` is how long the machines have worked, in frames; `done` how many actions there were.

    `running`: a recording goes on that nobody has stopped yet. `rehearsed` and `looked_back` speak
    of the marks as they stand, and of the last edit; `tracked` and `metered` of the cassette in
    the player: since it went in, its tracking was set, and some of it was played.
    `laid` is the master after all edits, where it was worked out already: it saves the next action
    from making every one of them again.
    """

    set_up: SetUp = field(repr=False, compare=False)
    player: PlayerStand
    recorder: RecorderStand
    marks: EditMarks = EditMarks()
    edits: tuple[Json, ...] = ()
    clock: int = 0
    done: int = 0
    running: bool = False
    rehearsed: bool = False
    looked_back: bool = True
    tracked: bool = False
    metered: bool = False
    handed_in: bool = False
    laid: Tape | None = field(default=None, repr=False, compare=False)

    @classmethod
    def at_first(cls, set_up: SetUp) -> Self:
        left = set_up.left
        return cls(
            set_up=set_up,
            player=PlayerStand(tracking=left["tracking"], skew=left["skew"]),
            recorder=RecorderStand(
                tracking=left["recorder_tracking"],
                picture_gain=left["picture_gain"],
                sound_mode=left["sound_mode"],
                sound_gain=left["sound_gain"],
            ),
            laid=set_up.master,
        )

    @property
    def session(self) -> EditSession:
        """All that was done to the master, as the tape model takes it."""
        return read_edit_session(self.document)

    @property
    def document(self) -> Json:
        before = self.set_up.document
        return before | {"edits": [*before["edits"], *self.edits]}

    @property
    def master(self) -> Tape:
        return self.laid or self.session.recorded()

    def with_edit(self, edit: Json) -> Self:
        """The worktop with one edit more on its master."""
        before = self.set_up.document["edits"]
        made = read_edit(DocumentValue(edit), self.set_up.session.sources, self.master.length)
        laid = record(self.master, made, self.set_up.bench, len(before) + len(self.edits))
        return replace(self, edits=(*self.edits, edit), laid=laid)

    @property
    def source(self) -> ShelfTape | None:
        """The cassette in the player."""
        return self.set_up.by_name.get(self.player.tape or "")

    def as_json(self) -> Json:
        kept = {name: getattr(self, name) for name in KEPT}
        parts = {name: asdict(getattr(self, name)) for name in ("player", "recorder", "marks")}
        return {**kept, **parts, "edits": list(self.edits)}

    @classmethod
    def from_json(cls, set_up: SetUp, kept: dict[str, Any]) -> Self:
        parts = {
            "player": PlayerStand(**kept["player"]),
            "recorder": RecorderStand(**kept["recorder"]),
            "marks": EditMarks(**kept["marks"]),
            "edits": tuple(kept["edits"]),
        }
        top = cls(set_up=set_up, **kept | parts)
        return replace(top, laid=top.session.recorded() if top.edits else set_up.master)

    def spending(self, frames: int, **changes: Any) -> Self:
        """The worktop after the machines have worked for so many frames."""
        return replace(self, clock=self.clock + frames, **changes)

    def with_player(self, **changes: Any) -> Self:
        return replace(self, player=replace(self.player, **changes))

    def with_recorder(self, **changes: Any) -> Self:
        return replace(self, recorder=replace(self.recorder, **changes))
