"""Edits that were made on a master, one of them perhaps badly, as an instructor describes them."""

from dataclasses import dataclass
from typing import Self

from exercises.drills.asks import Json
from exercises.drills.change import Change, Mode
from exercises.drills.own.master import OnMaster
from exercises.drills.quay_street import Shot
from exercises.drills.spot_described.case import Case, Step
from exercises.drills.wants import Side
from exercises.tape import Source, Take


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

    @property
    def shot(self) -> Shot:
        return Shot(self.picture, self.sound)


@dataclass(frozen=True, slots=True, kw_only=True)
class DescribedEdits(OnMaster):
    """All that an instructor says of the edits of a film, and of the tape before them."""

    edits: tuple[Made, ...]

    def case(self) -> Case:
        """What “spot the bad edit” judges."""
        steps = [Step(self.change(number), Mode(made.mode)) for number, made in self.numbered()]
        return Case(self.bench, self.master(), steps)

    def numbered(self) -> list[tuple[int, Made]]:
        return list(enumerate(self.edits, 1))

    def change(self, number: int) -> Change:
        """The edit of this number; each is copied from a source tape of its own."""
        made = self.edits[number - 1]
        first = 60 * self.bench.rate.nominal * number
        in_ = first + made.run_up
        out = in_ + made.end - made.at
        source = Source(f"Tape {number}", (Take(first, out + made.beyond),))
        return Change(source=source, in_=in_, out=out, at=made.at, tracks=made.meant)

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        edits = tuple(Made(**{**each, "meant": tuple(each["meant"])}) for each in stored["edits"])
        return super(DescribedEdits, cls).from_json({**stored, "edits": edits})
