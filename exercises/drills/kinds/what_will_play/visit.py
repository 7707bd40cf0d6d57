"""An edit master as it was found, and the edits of one visit at the bench."""

from collections.abc import Collection
from functools import cached_property

from exercises.drills.asks import Json
from exercises.drills.beliefs import Trial, recorded
from exercises.drills.setting.change import Change, Mode
from exercises.drills.setting.job import Job
from exercises.drills.setting.phrases import begun, listed
from exercises.drills.setting.quay_street import Shot
from exercises.drills.setting.scene import Clip, Scene
from exercises.tape import EditSession, Side, Tape, read_edit_session, record
from exercises.tape.explaining import Account

AROUND = 4  # seconds of tape before the first edit and after the last that are asked about


class Visit:
    """A scene whose first edits are long past; `story` tells of them, `jobs` are the new ones."""

    def __init__(self, scene: Scene) -> None:
        self.scene = scene
        self.story = ""
        self.jobs: list[Job] = []
        self.shots: dict[str, list[Clip]] = {}
        self.places: list[int] = []
        self.laid: list[tuple[Clip, int]] = []
        self._past = 0

    def found(self, clip: Clip, at: int, mode: Mode) -> int:
        """An edit from before the visit; the frame where it ends."""
        self._past += 1
        self.laid.append((clip, at))
        return self._add(clip, at, mode)

    def lay(
        self,
        clip: Clip,
        at: int,
        mode: Mode,
        purpose: str,
        meant: tuple[Side, ...] | None = None,
    ) -> int:
        """An edit of this visit, meant to record what it does unless told; where it ends."""
        self.jobs.append(Job(clip, at, mode, mode.tracks if meant is None else meant, purpose))
        return self._add(clip, at, mode)

    def _add(self, clip: Clip, at: int, mode: Mode) -> int:
        self.shots.setdefault(clip.tape, []).append(clip)
        return self.scene.lay(clip, at, mode)

    @cached_property
    def session(self) -> EditSession:
        return read_edit_session(self.scene.document())

    @cached_property
    def before(self) -> Tape:
        """The edit master as it was found; no edit is named as a cause."""
        tape = self.session.master
        for edit in self.session.edits[: self._past]:
            tape = record(tape, edit, self.session.bench)
        return tape

    def after(self, beliefs: Collection[str] = ()) -> Tape:
        """The edit master after the visit, or as a believer expects it."""
        tape = self.before
        for change, job in zip(self.changes, self.jobs, strict=True):
            trial = Trial(tape, change, job.mode, self.session.bench, self.scene.spare)
            tape = recorded(trial, beliefs)
        return tape

    @cached_property
    def changes(self) -> list[Change]:
        return [job.change(self.session.sources[job.clip.tape]) for job in self.jobs]

    def caused(self) -> Tape:
        """The edit master after the visit, each edit named as the cause of what it did."""
        tape = self.before
        for index, (change, job) in enumerate(zip(self.changes, self.jobs, strict=True)):
            tape = record(tape, change.edit(job.mode), self.session.bench, index)
        return tape

    @cached_property
    def accounts(self) -> list[Account]:
        """What can be told of each edit, on the tape as those before left it."""
        found: list[Account] = []
        for change, job in zip(self.changes, self.jobs, strict=True):
            tape = found[-1].after if found else self.before
            found.append(Account(tape, change.edit(job.mode), self.session.bench))
        return found

    @property
    def window(self) -> tuple[int, int]:
        """The part of the edit master that is asked about."""
        margin = AROUND * self.scene.rate.nominal
        starts = [*(job.at for job in self.jobs), *self.places]
        ends = [*(job.end for job in self.jobs), *self.places]
        return max(0, min(starts) - margin), min(self.scene.length, max(ends) + margin)

    def shot(self, source: str, frame: int) -> Shot:
        """What a frame of a source tape shows."""
        for clip in self.shots.get(source, ()):
            if clip.in_ <= frame < clip.out:
                return clip.shot
        return Shot("black", "silence")

    def lies(self) -> list[list[str]]:
        """What was found on the edit master: where each shot begins and ends, and what it is."""
        return [
            [self.scene.code(at), self.scene.code(at + clip.length), clip.tape, _told_shot(clip)]
            for clip, at in self.laid
        ]

    def told(self) -> list[Json]:
        """The edits in words."""
        return [self._told(job) for job in self.jobs]

    def _told(self, job: Job) -> Json:
        scene, clip = self.scene, job.clip
        return {
            "mode": job.mode.words,
            "where": scene.span(job.at, job.end),
            "what": f"{_told_shot(clip)}.",
            "purpose": job.purpose,
            "source": f"{clip.tape}, {scene.span(clip.in_, clip.out)}; "
            f"the {'take there runs' if len(clip.takes) == 1 else 'takes there run'} "
            f"{listed([scene.span(*take) for take in clip.takes])}",
        }


def _told_shot(clip: Clip) -> str:
    return begun(f"{clip.shot.picture}, with {clip.shot.sound}")
