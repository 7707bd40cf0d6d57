"""A line of the rubric: what a careful editor does, and whether it was done."""

from collections.abc import Sequence
from dataclasses import asdict, dataclass

from exercises.drills.asks import Json
from exercises.drills.judging.rules import Rule
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.wording import edits_of


@dataclass(frozen=True, slots=True)
class Judged:
    """`got` is None where it did not come up; `evidence` has the numbers of steps.

    `rule` is one that fits better than the line's own, where there is one.
    """

    got: bool | None
    evidence: str
    rule: Rule | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RubricLine:
    """`name` says what was asked, which was met or not; a habit is worth keeping every time."""

    slug: str
    name: str
    got: bool | None
    evidence: str
    rule: Rule
    habit: bool

    def as_json(self) -> Json:
        told = asdict(self)
        rule = told.pop("rule")
        return {**told, **{name: rule[name] for name in ("skill", "lesson", "section")}}


NOTHING_MADE = Judged(None, "You made no edit.")


def each_edit(made: Sequence[EditMade], missed: Sequence[EditMade], did: str) -> Judged:
    """Judged edit by edit: `did` says what is asked, as “looked back at”."""
    if not made:
        return NOTHING_MADE
    told = f"{did[:1].upper()}{did[1:]}"
    if not missed:
        return Judged(True, f"{told}: {edits_of(made)}.")
    if len(made) == 1:
        return Judged(False, f"Not {did}: {edits_of(missed)}.")
    count = f"{len(made) - len(missed)} of {len(made)} edits"
    return Judged(False, f"{told}: {count}; not {edits_of(missed)}.")
