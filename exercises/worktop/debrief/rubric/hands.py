"""Looking before an edit, and after it."""

from exercises.worktop.debrief.made import EditMade, StepDone
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.rubric.line import NOTHING_MADE, Judged, each_edit
from exercises.worktop.debrief.wording import edits_of


def looked_back(run: Proceedings) -> Judged:
    missed = [made for made in run.made if not _looked(run, made)]
    return each_edit(run.made, missed, "looked back at")


def _looked(run: Proceedings, made: EditMade) -> bool:
    """By looking back, or by playing the master over all of it."""
    reached = made.edit.at
    for step in run.afterwards(made):
        if step.name == "look-back":
            return True
        start, end = _played(step)
        if start <= reached < end:
            reached = end
    return reached >= made.edit.end


def _played(step: StepDone) -> tuple[int, int]:
    if step.name != "play" or step.arguments["machine"] != "recorder":
        return 0, 0
    return step.before.recorder.at, step.after.recorder.at


def rehearsed(run: Proceedings) -> Judged:
    """At least the first edit from each tape."""
    if not run.made:
        return NOTHING_MADE
    done = [made for made in run.made if run.rehearsed(made)]
    missed = [made for made in first_of_tapes(run) if made not in done]
    if missed and len(run.made) == 1:
        return Judged(False, f"Not rehearsed: {edits_of(missed)}.")
    count = f"Rehearsed: {len(done)} of {len(run.made)} edits."
    if missed:
        return Judged(False, f"{count} Not {edits_of(missed)}, the first from its tape.")
    return Judged(True, f"{count} The first from each tape was among them.")


def first_of_tapes(run: Proceedings) -> list[EditMade]:
    """The first edit from each source tape."""
    firsts: dict[str, EditMade] = {}
    for made in run.made:
        firsts.setdefault(made.edit.source.name, made)
    return list(firsts.values())
