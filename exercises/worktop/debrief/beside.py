"""The plan's recordings and the learner's edits, side by side."""

from collections.abc import Iterator, Sequence

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import length
from exercises.tape import Edit, Plan
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.wording import manner, recording

EXTRA = "The plan has nothing that corresponds."
LEFT_OUT = "You made nothing that corresponds."


def beside(run: Proceedings) -> Iterator[Json]:
    """A row for each recording of the plan, then one for each edit that it has no need of."""
    planned = run.plan.recordings if isinstance(run.plan, Plan) else ()
    found = corresponding([each.edit for each in planned], run.made)
    for each, made in zip(planned, found, strict=True):
        told = _compared(each.edit, made.edit, run) if made else LEFT_OUT
        yield _row(run, each.edit, each.reason, made, told)
    for made in run.made:
        if made not in found:
            yield _row(run, None, "", made, EXTRA if planned else "")


def corresponding(planned: Sequence[Edit], made: Sequence[EditMade]) -> list[EditMade | None]:
    """The learner's edit for each of the plan's: of the same shot, or else in the same place.

    Where there are several, the last one counts: those before it were made again.
    """
    found: dict[int, EditMade] = {}
    for alike in (_same_shot, _same_place):
        for number, edit in enumerate(planned):
            left = [each for each in made if each not in found.values() and alike(edit, each.edit)]
            if number not in found and left:
                found[number] = max(left, key=lambda each: (alike(edit, each.edit), each.number))
    return [found.get(number) for number in range(len(planned))]


def _same_shot(planned: Edit, made: Edit) -> int:
    """How many frames of its source they share, where they lie over each other."""
    if planned.source.name != made.source.name or not _same_place(planned, made):
        return 0
    return max(0, min(planned.out, made.out) - max(planned.in_, made.in_))


def _same_place(planned: Edit, made: Edit) -> int:
    return max(0, min(planned.end, made.end) - max(planned.at, made.at))


def _compared(planned: Edit, made: Edit, run: Proceedings) -> str:
    """Every way in which the edit is another than the plan's."""
    told = []
    if manner(made) != manner(planned):
        told.append(f"you made an {manner(made)}, the plan an {manner(planned)}")
    if made.source.name != planned.source.name:
        told.append(f"yours is from {made.source.name}")
    else:
        apart = (
            ("source in", made.in_ - planned.in_),
            ("source out", made.out - planned.out),
            ("master in", made.at - planned.at),
        )
        told += [
            f"{name} {length(abs(by), run.bench.rate)} {'later' if by > 0 else 'earlier'}"
            for name, by in apart
            if by
        ]
    sentence = "; ".join(told) or "the same edit"
    return f"{sentence[:1].upper()}{sentence[1:]}."


def _row(
    run: Proceedings, planned: Edit | None, reason: str, made: EditMade | None, told: str
) -> Json:
    return {
        "plan": recording(planned, run.bench) if planned else None,
        "reason": reason,
        "edit": recording(made.edit, run.bench) if made else None,
        "number": made.number if made else None,
        "step": made.step.number if made else None,
        "told": told,
    }
