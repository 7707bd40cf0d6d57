"""What the finished master itself shows."""

from exercises.drills.setting.phrases import listed
from exercises.worktop.debrief.mistakes import Mistake
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.rubric.line import Judged


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
    if not (run.judgement.states or run.judgement.faults):
        return Judged(True, "All that the brief asks for plays cleanly, and no cut has a fault.")
    spoil = "spoils" if len(bad) == 1 else "spoil"
    return Judged(False, f"{_counted(bad)} {spoil} how it plays: {_where(bad)}.")


def _counted(found: list[Mistake]) -> str:
    return f"{len(found)} thing{'' if len(found) == 1 else 's'}"


def _where(found: list[Mistake]) -> str:
    edits = sorted({made.number for each in found for made in each.made})
    told = [f"edit {number}" for number in edits]
    if not all(each.made for each in found):
        told.append("what none of your edits laid")
    return listed(told)
