"""What the finished master itself shows."""

from exercises.drills.setting.phrases import listed
from exercises.tape import Condition, DifferenceKind, play
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes import Mistake
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.rubric.line import Judged
from exercises.worktop.debrief.wording import edits_of

UNSTEADY = (Condition.UNSETTLED, Condition.UNSETTLED_SOUND)


def programme(run: Proceedings, found: tuple[Mistake, ...]) -> Judged:
    differing = [each for each in found if each.programme]
    if not run.judgement.differences:
        return Judged(True, "Every shot that the brief wants lies where it belongs.")
    are = "is" if len(differing) == 1 else "are"
    return Judged(
        False, f"{_counted(differing)} {are} not as the brief wants: {_where(differing)}."
    )


def faults(run: Proceedings, found: tuple[Mistake, ...]) -> Judged:
    bad = [each for each in found if any(part.sort != "difference" for part in each.parts)]
    if not run.made:
        return Judged(None, "You recorded nothing.")
    if not (run.judgement.states or run.judgement.faults):
        return Judged(True, "All that the brief asks for plays cleanly, and no cut has a fault.")
    spoil = "spoils" if len(bad) == 1 else "spoil"
    besides = _unsteady_besides(run, found)
    also = f" Unsteady, too, in what nobody asked for: {edits_of(besides)}." if besides else ""
    return Judged(False, f"{_counted(bad)} {spoil} how it plays: {_where(bad)}.{also}")


def _unsteady_besides(run: Proceedings, found: tuple[Mistake, ...]) -> list[EditMade]:
    """Edits whose copy is unsteady where they laid more than is wanted."""
    extra = [part for each in found for part in each.parts if part.kind == DifferenceKind.EXTRA]
    unsteady = [state for state in play(run.top.master, run.bench) if state.state in UNSTEADY]
    indices = {
        state.edit
        for state in unsteady
        if any(state.start < part.end and part.start < state.end for part in extra)
    }
    return [made for made in run.made if made.index in indices]


def _counted(found: list[Mistake]) -> str:
    return f"{len(found)} thing{'' if len(found) == 1 else 's'}"


def _where(found: list[Mistake]) -> str:
    edits = sorted({made.number for each in found for made in each.made})
    told = [f"edit {number}" for number in edits]
    if not all(each.made for each in found):
        told.append("what none of your edits laid")
    return listed(told)
