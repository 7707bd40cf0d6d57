"""Altered rules of where an edit begins and ends."""

from dataclasses import replace

from exercises.drills.beliefs.attempt import Attempt
from exercises.drills.beliefs.recording import hole_before, made_unsettled
from exercises.tape import Tape
from exercises.tape.by_hand import in_phase


def one_frame_more(attempt: Attempt) -> Attempt:
    """The frame at the edit out recorded too, where the tape is long enough."""
    change = attempt.change
    if change.end >= attempt.master.length:
        return attempt
    return replace(attempt, change=replace(change, out=change.out + 1))


def bridged(attempt: Attempt, tape: Tape) -> Tape:
    """A short hole before the recording taken to do no harm: pulses run on through it."""
    hole = hole_before(attempt, tape)
    return in_phase(tape, hole.start, attempt.change.at) if hole else tape


def spoilt_joint(attempt: Attempt, before: Tape, tape: Tape) -> Tape:
    """What begins a little before the end of the last recording taken to be unsteady."""
    at, relock = attempt.change.at, attempt.bench.relock
    old = before.control.at(at)
    if old is None or not old.start < at < old.end <= at + relock:
        return tape
    return made_unsettled(tape, attempt.mode.tracks, at, min(at + relock, attempt.change.end))
