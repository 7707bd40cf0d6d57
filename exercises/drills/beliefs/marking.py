"""Altered rules of where an edit begins and ends."""

from dataclasses import replace

from exercises.drills.beliefs.recording import hole_before, made_unsettled
from exercises.drills.beliefs.trial import Trial
from exercises.tape import Tape
from exercises.tape.by_hand import in_phase


def one_frame_more(trial: Trial) -> Trial:
    """The frame at the edit out recorded too, where the tape is long enough."""
    change = trial.change
    if change.end >= trial.master.length:
        return trial
    return replace(trial, change=replace(change, out=change.out + 1))


def bridged(trial: Trial, tape: Tape) -> Tape:
    """A short hole before the recording taken to do no harm: pulses run on through it."""
    hole = hole_before(trial, tape)
    return in_phase(tape, hole.start, trial.change.at) if hole else tape


def spoilt_joint(trial: Trial, before: Tape, tape: Tape) -> Tape:
    """What begins a little before the end of the last recording taken to be unsteady."""
    at, relock = trial.change.at, trial.bench.relock
    old = before.control.at(at)
    if old is None or not old.start < at < old.end <= at + relock:
        return tape
    return made_unsettled(tape, trial.mode.tracks, at, min(at + relock, trial.change.end))
