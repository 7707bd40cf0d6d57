"""Who is to blame where the tape is recorded, and its picture or sound is not steady."""

from exercises.tape import Assemble, Insert
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.blame import Blame, hole_before, laid_over
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.mistakes.kinds import MistakeKind
from exercises.worktop.debrief.proceedings import Proceedings


def rolling(found: Finding, run: Proceedings, made: EditMade | None) -> Blame:
    """Pulses that began anew: at an edit, or behind what an assemble wiped."""
    if made and made.covers(found.start):
        return _late(made, run)
    for each in reversed(run.made):
        _, wiped = each.account.wiped
        if isinstance(each.edit, Assemble) and _begins(run, found.start) == wiped:
            return Blame(MistakeKind.WIPED, each)
    return Blame(MistakeKind.MASTER_RUN_UP, None)


def _begins(run: Proceedings, frame: int) -> int | None:
    pulses = run.top.master.control.at(frame)
    return pulses.start if pulses else None


def unsettled(found: Finding, run: Proceedings, made: EditMade | None) -> Blame:
    if made is None:
        return Blame(MistakeKind.SOURCE_RUN_UP, None)
    account = made.account
    if found.start >= made.edit.at + account.unlocked:
        return Blame(MistakeKind.NEW_TAKE, made)
    if any(short.source for short in account.short):
        return Blame(MistakeKind.SOURCE_RUN_UP, made)
    return _late(made, run)


def _late(made: EditMade, run: Proceedings) -> Blame:
    """Too little run-up on the master: a hole was left, or an insert before it laid no pulses."""
    at = made.edit.at
    if hole_before(made):
        return Blame(MistakeKind.HOLE, made)
    before = laid_over(made.before, at - 1, run) if not made.before.run_up(at) else None
    if before and isinstance(before.edit, Insert):
        return Blame(MistakeKind.NO_PULSES, before)
    return Blame(MistakeKind.MASTER_RUN_UP, made)
