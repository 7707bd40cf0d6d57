"""Whether an edit would harm what has to stay: told from the tape before it is made."""

from exercises.tape.bench import Bench
from exercises.tape.edit import Assemble, Edit
from exercises.tape.judging.brief import Kept
from exercises.tape.planning.stand import lays
from exercises.tape.planning.target import Target
from exercises.tape.tape import Tape
from exercises.tape.work import spend


def harms(target: Target, tape: Tape, edit: Edit) -> bool:
    """Whether it records over, wipes, or unsettles anything that the brief keeps."""
    return any(_harmed(target, tape, edit, kept) for kept in target.brief.kept)


def _harmed(target: Target, tape: Tape, edit: Edit, kept: Kept) -> bool:
    spend()
    if kept.start < edit.end and edit.at < kept.end and _records(edit, kept):
        return True
    if not isinstance(edit, Assemble):
        return False
    wiped = min(edit.end + target.bench.erase_gap, tape.length)
    start, end = max(kept.start, edit.end), min(kept.end, wiped)
    if start < end and is_solid(target.before, kept, start, end):
        return True
    return rolls(tape, target.bench, kept, wiped)


def _records(edit: Edit, kept: Kept) -> bool:
    if kept.track == "control":
        return isinstance(edit, Assemble)
    return lays(edit, kept.track)


def is_solid(before: Tape, kept: Kept, start: int, end: int) -> bool:
    """Whether there was anything to keep."""
    if kept.track == "control":
        return any(before.control.laid.between(start, end))
    return any(before.on(kept.track).laid.between(start, end))


def rolls(tape: Tape, bench: Bench, kept: Kept, wiped: int) -> bool:
    """Whether what is kept would roll where the old pulses now begin, and did not before."""
    run = tape.control.at(wiped)
    if run is None or run.start == wiped:
        return False
    rolls_from = max(wiped, run.start + bench.relock)
    rolls_until = min(wiped + bench.relock, run.end)
    if kept.track == "control" and kept.start < wiped < kept.end:
        return True
    return max(rolls_from, kept.start) < min(rolls_until, kept.end)
