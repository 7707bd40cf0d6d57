"""The edit that a mistake is put down to, and what has to be looked up for it."""

from typing import NamedTuple

from exercises.tape import Assemble, Tape
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.kinds import MistakeKind
from exercises.worktop.debrief.proceedings import Proceedings


class Blame(NamedTuple):
    """`made` is None where it was so before the learner sat down, or where nobody laid it."""

    kind: MistakeKind
    made: EditMade | None


def hole_before(made: EditMade) -> int:
    """How many frames without pulses an assemble left behind those before it; 0: none.

    Where the pulses before it ended more than a run-up earlier, it was not meant to join them.
    """
    edit, lock = made.edit, made.step.before.set_up.bench.lock
    if not isinstance(edit, Assemble) or made.before.run_up(edit.at):
        return 0
    ends = (run.end for run in made.before.control.laid if run.end <= edit.at)
    gap = edit.at - max(ends, default=0)
    return gap if 0 < gap < edit.at and gap <= lock else 0


def laid_over(master: Tape, frame: int, run: Proceedings) -> EditMade | None:
    """The last edit of the learner's that laid picture or sound on a frame."""
    causes = (track.cause(frame) for track in (master.picture, master.sound))
    made = [run.by_index[index] for index in causes if index in run.by_index]
    return max(made, key=lambda each: each.number, default=None)
