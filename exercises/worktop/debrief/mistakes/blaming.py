"""Which mistake something found belongs to, and which edit of the learner’s made it."""

from exercises.tape import Condition
from exercises.worktop.debrief.mistakes.absent import absent
from exercises.worktop.debrief.mistakes.blame import Blame
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.mistakes.kinds import OF_DIFFERENCE, OF_FAULT
from exercises.worktop.debrief.mistakes.unsteady import rolling, unsettled
from exercises.worktop.debrief.proceedings import Proceedings

UNSETTLED = (Condition.UNSETTLED, Condition.UNSETTLED_SOUND)


def blame_of(found: Finding, run: Proceedings) -> Blame:
    made = run.by_index.get(found.edit)
    if found.sort == "fault":
        return Blame(OF_FAULT[found.kind], made)
    if found.sort == "difference" and found.kind in OF_DIFFERENCE:
        return Blame(OF_DIFFERENCE[found.kind], made)
    if found.kind == Condition.RELOCK:
        return rolling(found, run, made)
    if found.kind in UNSETTLED:
        return unsettled(found, run, made)
    return absent(found, run, made)
