"""What was put at risk."""

from collections.abc import Sequence

from exercises.drills.judging import rules
from exercises.drills.judging.rules import Rule
from exercises.drills.setting.phrases import code
from exercises.tape import Insert
from exercises.tape.judging.keeping import harms
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.rubric.line import NOTHING_MADE, Judged
from exercises.worktop.debrief.wording import edits_of, steps_of

PROTECTED = "no record"  # the sign of a recorder that will not: `edit_at_hand.refused_by_machine`


def at_risk(run: Proceedings) -> Judged:
    tried = [step.number for step in run.steps if step.sign == PROTECTED]
    harmed = [made for made in run.made if _harms(run, made)]
    if not (run.made or tried):
        return NOTHING_MADE
    told = []
    if tried:
        told.append(f"You tried to record on a source tape at {steps_of(tried)}.")
    if harmed:
        at = code(harmed[0].edit.at, run.bench)
        told.append(f"What had to stay was recorded over by {edits_of(harmed)}, from {at} on.")
    said = " ".join(told) or "Nothing that had to stay was recorded over."
    return Judged(not told, said, rules.PROTECTED if tried else _rule(harmed))


def _rule(harmed: Sequence[EditMade]) -> Rule | None:
    """An insert spoils less than an assemble: the track that it takes as well."""
    inserts = all(isinstance(made.edit, Insert) for made in harmed)
    return rules.ONE_TRACK if harmed and inserts else None


def _harms(run: Proceedings, made: EditMade) -> bool:
    """Whether this edit by itself took something that the brief keeps, mended since or not."""
    after = made.step.after.master
    return any(any(harms(kept, made.before, after)) for kept in run.brief.kept)
