"""Altered rules of recording."""

from collections.abc import Sequence
from dataclasses import replace

from exercises.drills.beliefs.trial import Trial
from exercises.drills.setting.change import Mode
from exercises.tape import SIDES, Laid, Pulses, Run, Side, Tape
from exercises.tape.by_hand import in_phase, with_runs


def laid_pulses(trial: Trial, tape: Tape) -> Tape:
    """Pulses under the recording, in phase with those on either side of it."""
    change = trial.change
    before, after = tape.control.at(change.at - 1), tape.control.at(change.end)
    start = before.start if before else change.at
    return in_phase(tape, start, after.end if after else change.end)


def both_tracks(trial: Trial) -> Trial:
    """Picture and sound recorded, whichever was asked for."""
    return replace(trial, mode=Mode.INSERT_BOTH)


def hole_before(trial: Trial, tape: Tape) -> Run[Pulses] | None:
    """The pulses before a short hole that ends where the recording begins, if there is one."""
    at = trial.change.at
    runs = [run for run in tape.control.runs if run.end < at]
    if tape.control.at(at - 1) or not runs or at - runs[-1].end > trial.bench.erase_gap:
        return None
    return runs[-1]


def closed_hole(trial: Trial, tape: Tape) -> Tape:
    """A short hole before the recording closed: what lies before it runs on through it."""
    at, pulses = trial.change.at, hole_before(trial, tape)
    if pulses is None:
        return tape
    start = pulses.end
    for track in SIDES:
        held = tape.on(track).at(start - 1)
        running = [Run(start, at, held.tail(start).value)] if held else []
        tape = with_runs(tape, (track,), start, at, running)
    return in_phase(tape, pulses.start, at)


def clean_end(trial: Trial, before: Tape, tape: Tape) -> Tape:
    """Nothing wiped past the end, and the old pulses running on in phase from there."""
    end, length = trial.change.end, before.length
    for track in SIDES:
        kept = before.on(track).within(end, length)
        tape = with_runs(tape, (track,), end, length, kept)
    control = tape.control.over(end, length, before.control.within(end, length), cause=None)
    tape = Tape(length, control, tape.picture, tape.sound)
    new, old = tape.control.at(end - 1), tape.control.at(end)
    return in_phase(tape, new.start, old.end) if new and old else tape


def picked_tracks(trial: Trial, before: Tape, tape: Tape) -> Tape:
    """What is not wanted left as it was under the recording."""
    at, end = trial.change.at, trial.change.end
    for track in SIDES:
        if track not in trial.change.tracks:
            kept = before.on(track).within(at, end)
            tape = with_runs(tape, (track,), at, end, kept)
    return tape


def pushed_along(trial: Trial, before: Tape, tape: Tape) -> Tape:
    """Everything that followed moved later by the length of the recording."""
    at, end, length = trial.change.at, trial.change.end, before.length
    shift = end - at
    for track in trial.mode.tracks:
        moved = [
            Run(run.start + shift, run.end + shift, run.value)
            for run in before.on(track).within(at, length - shift)
        ]
        tape = with_runs(tape, (track,), end, length, moved)
    phase = before.control.at(at)
    return in_phase(tape, phase.start, min(phase.end + shift, length)) if phase else tape


def ragged_end(trial: Trial, before: Tape, tape: Tape) -> Tape:
    """A disturbance after the insert, in what is left of a shot that it ends in."""
    end = trial.change.end
    until = min(end + trial.bench.relock, tape.length)
    for track in trial.mode.tracks:
        if not any(each.on(track).runs_across(end) for each in (before, tape)):
            continue
        tape = made_unsettled(tape, (track,), end, until)
    return tape


def made_unsettled(tape: Tape, tracks: Sequence[Side], start: int, end: int) -> Tape:
    """The tape with what lies on some tracks in `[start, end)` not settled."""
    for track in tracks:
        spoilt = [
            run._replace(value=_unsettled(run.value)) for run in tape.on(track).within(start, end)
        ]
        tape = with_runs(tape, (track,), start, end, spoilt)
    return tape


def _unsettled(laid: Laid) -> Laid:
    return replace(laid, settled=False)
