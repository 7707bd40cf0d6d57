"""A shot log with the place of each shot on the edit master, and what stands in its way."""

from collections.abc import Collection
from dataclasses import dataclass
from functools import cached_property

from exercises.drills.asks import Json
from exercises.drills.beliefs.run_ups import without_black
from exercises.drills.setting.scene import Clip, Scene
from exercises.tape import EditSession, Tape, read_edit_session, record

NO_SOURCE, NO_MASTER = "no-source-run-up", "no-master-run-up"
TOUCHING, PRE_ROLL = "touching-takes-share-pulses", "pre-roll-makes-run-up"
BLACK, LAST = "black-is-blank", "out-is-last-frame"


@dataclass(frozen=True, slots=True)
class Entry:
    """A shot of the log: what is copied, where to, and the run-up there is on either tape.

    `but_for_black` is that on the edit master for who takes black for nothing.
    """

    clip: Clip
    at: int
    on_source: int
    on_master: int
    but_for_black: int

    @property
    def touches(self) -> bool:
        """Whether another take lies right before its own."""
        return self.clip.takes[0] != self.clip.take

    def ends_early(self, beliefs: Collection[str] = ()) -> bool:
        """Whether its take ends before it does."""
        return self.clip.take[1] < self.clip.out + (LAST in beliefs)

    def hindered(self, needed: int, beliefs: Collection[str] = ()) -> bool:
        """Whether it can't be edited as it is, or so somebody with these beliefs thinks."""
        source = self.clip.in_ - self.clip.takes[0][0] if TOUCHING in beliefs else self.on_source
        master = self.but_for_black if BLACK in beliefs else self.on_master
        return (
            self.ends_early(beliefs)
            or (source < needed and NO_SOURCE not in beliefs)
            or (master < needed and NO_MASTER not in beliefs)
        )


class Log:
    """Shots, each to follow the one before; the log lists them by source tape."""

    def __init__(self, scene: Scene, *, at: int, assembled: bool) -> None:
        self.scene = scene
        self.story = ""
        self.start = at
        self._assembled = assembled
        self._clips: list[Clip] = []
        self._at = at

    def add(self, clip: Clip) -> None:
        self._clips.append(clip)
        if self._assembled:
            self._at = self.scene.assemble(clip, self._at)
        else:
            self._at = self.scene.insert(clip, self._at)

    @cached_property
    def session(self) -> EditSession:
        return read_edit_session(self.scene.document())

    @cached_property
    def entries(self) -> tuple[Entry, ...]:
        """The shots as they are edited, with the run-up that there is when their turn comes."""
        tape, found = self.session.master, []
        for clip, edit in zip(self._clips, self.session.edits, strict=True):
            on_source, on_master = edit.source.run_up(edit.in_), tape.run_up(edit.at)
            enough = on_master >= self.lock
            film = without_black(tape).run_up(edit.at) if enough else on_master
            found.append(Entry(clip, edit.at, on_source, on_master, film))
            tape = record(tape, edit, self.session.bench)
        return tuple(found)

    @cached_property
    def listed(self) -> tuple[Entry, ...]:
        """The shots in the order of the log."""
        return tuple(sorted(self.entries, key=lambda entry: (entry.clip.tape, entry.clip.in_)))

    @property
    def lock(self) -> int:
        return self.session.bench.lock

    def concerned(self) -> list[str]:
        """The beliefs that may change what is thought of a shot."""
        found = {
            NO_SOURCE: True,
            NO_MASTER: True,
            TOUCHING: any(each.touches for each in self.entries),
            PRE_ROLL: self.scene.spare > 0,
            BLACK: any(each.but_for_black < each.on_master for each in self.entries),
            LAST: any(each.ends_early((LAST,)) for each in self.entries),
        }
        return [belief for belief, concerns in found.items() if concerns]

    def needed(self, beliefs: Collection[str] = ()) -> int:
        """The run-up that must have been recorded."""
        return self.lock - (self.scene.spare if PRE_ROLL in beliefs else 0)

    @cached_property
    def after(self) -> Tape:
        """The edit master once all is edited as it stands in the log."""
        return self.session.recorded()

    def earliest(self, entry: Entry, beliefs: Collection[str] = ()) -> int:
        """The first frame of its take that can be an edit in."""
        first = entry.clip.take[0]
        if NO_SOURCE in beliefs:
            return first
        counted = entry.clip.takes[0][0] if TOUCHING in beliefs else first
        return max(first, counted + self.needed(beliefs))

    def rows(self) -> list[Json]:
        scene = self.scene
        return [
            {
                "number": number,
                "tape": entry.clip.tape,
                "shot": entry.clip.shot.picture,
                "take": [scene.code(entry.clip.take[0]), scene.code(entry.clip.take[1] - 1)],
                "touches": scene.code(entry.clip.takes[0][0]) if entry.touches else "",
                "edit": [scene.code(entry.clip.in_), scene.code(entry.clip.out)],
                "at": scene.code(entry.at),
            }
            for number, entry in enumerate(self.listed, 1)
        ]
