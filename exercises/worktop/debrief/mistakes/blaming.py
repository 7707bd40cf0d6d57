"""Which mistake something found belongs to, and which edit of the learner’s made it."""

from exercises.tape import Condition, DifferenceKind
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.absent import absent
from exercises.worktop.debrief.mistakes.blame import Blame
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.mistakes.kinds import OF_DIFFERENCE, OF_FAULT, MistakeKind
from exercises.worktop.debrief.mistakes.unsteady import rolling, unsettled
from exercises.worktop.debrief.proceedings import Proceedings

UNSETTLED = (Condition.UNSETTLED, Condition.UNSETTLED_SOUND)


def blame_of(found: Finding, run: Proceedings) -> Blame:
    made = run.by_index.get(found.edit)
    if found.sort == "fault":
        behind = made and found.start == made.account.wiped[1] > made.edit.end
        return Blame(MistakeKind.WIPED if behind else OF_FAULT[found.kind], made)
    if found.kind == Condition.RELOCK or _out_of_phase(found, made):
        return rolling(found, run, made)
    if found.sort == "difference" and found.kind in OF_DIFFERENCE:
        return Blame(OF_DIFFERENCE[found.kind], made)
    if found.kind in UNSETTLED:
        return unsettled(found, run, made)
    return absent(found, run, made)


def _out_of_phase(found: Finding, made: EditMade | None) -> bool:
    """Whether pulses that nobody laid anew had to stay in phase with others that are gone."""
    return found.kind == DifferenceKind.TOUCHED and made is None
