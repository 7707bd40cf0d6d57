"""Edits that laid something else than was wanted, or somewhere else."""

from collections.abc import Sequence

from exercises.drills.setting.phrases import code, span
from exercises.tape import Assemble, DifferenceKind, Wanted
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.proceedings import Proceedings

Parts = Sequence[Finding]


def over(made: EditMade, parts: Parts, run: Proceedings) -> str:
    if isinstance(made.edit, Assemble):
        return "ran over it: an assemble records picture, sound and pulses"
    return "ran over it"


def left(made: EditMade, parts: Parts, run: Proceedings) -> str:
    return f"ran over it and left the {parts[0].track} as it was"


def blank_source(made: EditMade, parts: Parts, run: Proceedings) -> str:
    return f"{_copied(made, run)}, where it is blank in part"


def misplaced(made: EditMade, parts: Parts, run: Proceedings) -> str:
    moved = [part for part in parts if part.kind in (DifferenceKind.EARLY, DifferenceKind.LATE)]
    in_, shot = made.edit.in_, _shot(moved, run)
    if shot is None or not shot.in_ <= in_ < shot.out:
        return wrong_shot(made, moved, run)
    told = f"laid {code(in_, run.bench)} of {made.edit.source.name} at its own beginning"
    return f"{told}; it belongs at {code(in_ + shot.shift, run.bench)}"


def wrong_shot(made: EditMade, parts: Parts, run: Proceedings) -> str:
    shot = _shot(parts, run)
    wanted = (
        f"; the brief wants {shot.source} {span(shot.in_, shot.out, run.bench)}" if shot else ""
    )
    return f"{_copied(made, run)}{wanted}"


def _shot(parts: Parts, run: Proceedings) -> Wanted | None:
    for part in parts:
        if part.shot is not None and part.track != "control":
            return run.brief.on(part.track)[part.shot]
    return None


def extra(made: EditMade, parts: Parts, run: Proceedings) -> str:
    return "laid more than is wanted"


def flash(made: EditMade, parts: Parts, run: Proceedings) -> str:
    return "begins or ends a few frames beside the shot next to it"


def words(made: EditMade, parts: Parts, run: Proceedings) -> str:
    return f"{_copied(made, run)}: there somebody is speaking, or drawing breath"


def out_of_step(made: EditMade, parts: Parts, run: Proceedings) -> str:
    return "laid one track of what belongs together, and not at the same place as the other"


def generations(made: EditMade, parts: Parts, run: Proceedings) -> str:
    return f"{_copied(made, run)}, which is a copy already"


def _copied(made: EditMade, run: Proceedings) -> str:
    place = span(made.edit.in_, made.edit.out, run.bench)
    return f"copied {made.edit.source.name} {place}"
