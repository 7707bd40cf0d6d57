"""What came of the edits and why, worked out once, when the question is made."""

from collections.abc import Collection, Sequence
from itertools import pairwise

from exercises.drills.asks import Json
from exercises.drills.beliefs import BELIEFS
from exercises.drills.kinds.what_will_play.visit import Visit
from exercises.drills.setting.change import Mode
from exercises.tape import Condition, PlaybackState, Tape, play, tape_map


def consequences(visit: Visit, edges: Sequence[int], held: Collection[Sequence[str]]) -> Json:
    """The tape as it is, the reason for each stretch, and the tape that each belief expects.

    None for a belief about playing alone: its tape is the same.
    """
    tape = visit.caused()
    states = play(tape, visit.session.bench)
    return {
        "map": _map(visit, tape),
        "why": [_why(visit, states, start) for start, _ in pairwise(edges)],
        "expected": {
            beliefs[0]: _map(visit, visit.after(beliefs), faults=False)
            for beliefs in held
            if len(beliefs) == 1 and BELIEFS[beliefs[0]].played is None
        },
    }


def _map(visit: Visit, tape: Tape, *, faults: bool = True) -> Json:
    start, end = visit.window
    bench = visit.session.bench
    return tape_map(tape, bench, start=start, end=end, faults=faults).as_json()


def _why(visit: Visit, states: Sequence[PlaybackState], frame: int) -> str:
    """One sentence on a stretch that does not play cleanly; nothing on one that does."""
    state = next(each for each in states if each.start <= frame < each.end)
    edit = "" if state.edit is None else f"Edit {state.edit + 1}"
    match state.state:
        case Condition.NO_CONTROL:
            return _unpulsed(visit.caused(), frame, edit)
        case Condition.RELOCK:
            return _rolling(visit, state, edit)
        case Condition.UNSETTLED | Condition.UNSETTLED_SOUND:
            return f"{edit} had too little run-up on {_short_of(visit, state)}."
        case Condition.NO_PICTURE | Condition.NO_SOUND:
            return "There are pulses, but nothing is laid on that track."
    return ""


def _unpulsed(tape: Tape, frame: int, edit: str) -> str:
    """Why there are no pulses; and, where something lies there all the same, what it does."""
    wiped = f"{edit} is an assemble: it wiped the tape past its end"
    if not (tape.picture.at(frame) or tape.sound.at(frame)):
        return f"{wiped}." if edit else "Nothing was ever recorded here."
    laid = f"{wiped}, pulses and all" if edit else "No pulses were ever laid here"
    return f"{laid}, and an insert lays none: nothing locks to what it has laid."


def _short_of(visit: Visit, state: PlaybackState) -> str:
    """The tape on which an edit had too little run-up; of both, the source tape."""
    short = visit.accounts[state.edit or 0].short
    return (short[0].source if short else None) or "the edit master"


def _rolling(visit: Visit, state: PlaybackState, edit: str) -> str:
    if not edit:
        if not state.start:
            return "The tape’s first pulses are here: a machine needs a moment to lock to them."
        return "The old pulses begin here, out of phase with whatever comes before."
    job = visit.jobs[state.edit or 0]
    if job.mode is Mode.ASSEMBLE and job.at == state.start:
        return f"{edit} had too little run-up on the edit master, so its pulses begin anew."
    return f"The pulses that {edit.lower()} left begin anew here."
