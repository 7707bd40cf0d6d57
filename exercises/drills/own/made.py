"""Edits that were made on a master, one of them perhaps badly, as an instructor describes them."""

from dataclasses import dataclass
from typing import Self

from exercises.drills.asks import Json
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase, MeantEdit
from exercises.drills.own.master import OnMaster
from exercises.drills.setting.change import Mode
from exercises.drills.setting.job import Job
from exercises.drills.setting.quay_street import Shot
from exercises.drills.setting.scene import Clip
from exercises.tape import Side, Source, Take


@dataclass(frozen=True, slots=True, kw_only=True)
class Made:
    """An edit at `[at, end)` of the master, in frames, in a mode; `meant` is what was to change.

    Its take begins `run_up` before the edit in. It goes on `beyond` the edit out, or ends before
    it where that is below 0.
    """

    mode: str
    meant: tuple[Side, ...]
    at: int
    end: int
    run_up: int
    beyond: int
    picture: str
    sound: str
    purpose: str

    def job(self, tape: str, start: int) -> Job:
        """The edit, copied from a take that begins at `start` of a source tape."""
        in_ = start + self.run_up
        out = in_ + self.end - self.at
        take = (start, out + self.beyond)
        clip = Clip(tape, in_, out, (take,), Shot(self.picture, self.sound))
        return Job(clip, self.at, Mode(self.mode), self.meant, self.purpose)


@dataclass(frozen=True, slots=True, kw_only=True)
class DescribedEdits(OnMaster):
    """All that an instructor says of the edits of a film, and of the tape before them."""

    edits: tuple[Made, ...]

    def case(self) -> EditsCase:
        """What “spot the bad edit” judges. Each edit is copied from a source tape of its own."""
        return EditsCase(self.bench, self.master(), [step(job) for job in self.jobs])

    @property
    def jobs(self) -> list[Job]:
        minute = 60 * self.bench.rate.nominal
        return [
            made.job(f"Tape {number}", number * minute) for number, made in enumerate(self.edits, 1)
        ]

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        edits = tuple(Made(**{**each, "meant": tuple(each["meant"])}) for each in stored["edits"])
        return super(DescribedEdits, cls).from_json({**stored, "edits": edits})


def step(job: Job) -> MeantEdit:
    takes = tuple(Take(*take) for take in job.clip.takes)
    return MeantEdit(job.change(Source(job.clip.tape, takes)), job.mode)
