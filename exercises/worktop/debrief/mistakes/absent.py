"""Who is to blame where something wanted is not on the tape, or nothing that plays."""

from exercises.tape import Condition, Insert
from exercises.tape.judging.comparing import right
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.blame import Blame, hole_before, laid_over
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.mistakes.kinds import MistakeKind
from exercises.worktop.debrief.proceedings import Proceedings


def absent(found: Finding, run: Proceedings, made: EditMade | None) -> Blame:
    """Something wanted is not there: who took it away, or should have laid it?"""
    for each in run.made:
        if each.edit.at >= found.end and hole_before(each) and _in_hole(found, each):
            return Blame(MistakeKind.HOLE, each)
    if made and made.wiped(found.start) and _was_there(found, made):
        return Blame(MistakeKind.WIPED, made)
    if found.kind == Condition.NO_CONTROL:
        over = laid_over(run.top.master, found.start, run)
        if over and isinstance(over.edit, Insert):
            return Blame(MistakeKind.NO_PULSES, over)
    if made and made.covers(found.start):
        return Blame(_laid_wrong(found, run, made), made)
    for kind, does in ((MistakeKind.CUT_SHORT, _cuts_short), (MistakeKind.TRACK_LEFT, _left)):
        for each in reversed(run.made):
            if does(found, each, run):
                return Blame(kind, each)
    return Blame(MistakeKind.NOT_LAID, None)


def _in_hole(found: Finding, made: EditMade) -> bool:
    return made.edit.at - hole_before(made) <= found.start


def _was_there(found: Finding, made: EditMade) -> bool:
    before = made.before
    track = before.control if found.track == "control" else before.on(found.track)
    return track.at(found.start) is not None


def _laid_wrong(found: Finding, run: Proceedings, made: EditMade) -> MistakeKind:
    source_frame = found.start - made.edit.at + made.edit.in_
    if made.tape.take_at(source_frame) is None:
        return MistakeKind.BLANK_SOURCE
    if found.shot is not None and found.track != "control":
        was = made.before.on(found.track).at(found.start)
        if was and right(was, run.brief.on(found.track)[found.shot]):
            return MistakeKind.RECORDED_OVER
    return MistakeKind.WRONG_SHOT


def _cuts_short(found: Finding, made: EditMade, run: Proceedings) -> bool:
    """Whether it laid the rest of the same shot, where that belongs."""
    edit = made.edit
    return any(
        shot.source == edit.source.name
        and abs(edit.at - edit.in_ - shot.shift) <= shot.tolerance
        and shot.track in made.account.sides
        and max(edit.at, shot.at) < min(edit.end, shot.end)
        for shot in run.brief.wanted
        if found.track in (shot.track, "control") and shot.at <= found.start < shot.end
    )


def _left(found: Finding, made: EditMade, run: Proceedings) -> bool:
    """Whether an insert ran over it and left its track alone."""
    return made.covers(found.start) and found.track in made.account.left
