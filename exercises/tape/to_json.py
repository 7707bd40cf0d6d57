"""What the tape model finds, as plain values for JSON."""

from dataclasses import asdict

from exercises.tape.edit import Edit, Insert
from exercises.tape.faults import Fault
from exercises.tape.judging import Difference, Economy, Judgement, Match
from exercises.tape.machines import Recorder, SoundLevel
from exercises.tape.planning import NoPlan, Plan
from exercises.tape.playback import PlaybackState
from exercises.tape.rate import Rate

Plain = dict[str, object]


def plain_state(state: PlaybackState) -> Plain:
    start, end, condition, edit = state
    return {"start": start, "end": end, "state": condition.value, "edit": edit}


def plain_fault(fault: Fault) -> Plain:
    value, unit, limit = fault.measured
    return {
        "kind": fault.kind.value,
        "track": fault.track,
        "start": fault.start,
        "end": fault.end,
        "severity": fault.severity.words,
        "edit": fault.edit,
        "measured": {"value": value, "unit": unit.value, "limit": limit},
    }


def plain_judgement(judgement: Judgement, rate: Rate) -> Plain:
    return {
        "fulfilled": judgement.fulfilled,
        "matches": [_match(match) for match in judgement.matches],
        "differences": [_difference(each) for each in judgement.differences],
        "states": [plain_state(state) for state in judgement.states],
        "faults": [plain_fault(fault) for fault in judgement.faults],
        "economy": plain_economy(judgement.economy, rate),
    }


def plain_economy(economy: Economy, rate: Rate) -> Plain:
    return {**asdict(economy), "bench": economy.bench, "minutes": economy.minutes(rate)}


def plain_plan(plan: Plan | NoPlan, rate: Rate) -> Plain:
    if isinstance(plan, NoPlan):
        return {"none": list(plan.reasons)}
    return {
        "recordings": [
            {"edit": plain_edit(planned.edit), "reason": planned.reason}
            for planned in plan.recordings
        ],
        "economy": plain_economy(plan.economy, rate),
        "exact": plan.exact,
    }


def plain_edit(edit: Edit) -> Plain:
    """An edit as a session document has it; a plan is made on a well-adjusted bench."""
    plain: Plain = {"mode": "assemble"}
    if isinstance(edit, Insert):
        plain = {"mode": "insert", "picture": edit.picture, "sound": edit.sound}
    plain |= {"source": edit.source.name, "in": edit.in_, "out": edit.out, "at": edit.at}
    recorder, sound = edit.machines.recorder, edit.machines.sound
    if recorder != Recorder():
        plain["recorder"] = {"name": recorder.name}
        if recorder.snr is not None:
            plain["recorder"] = {"name": recorder.name, "snr": recorder.snr}
    if sound != SoundLevel():
        plain["sound_level"] = {"mode": sound.mode.value, "gain": sound.gain}
    return plain


def _match(match: Match) -> Plain:
    return {"track": match.track, "shot": match.shot, "start": match.start, "end": match.end}


def _difference(difference: Difference) -> Plain:
    return {**asdict(difference), "kind": difference.kind.value}
