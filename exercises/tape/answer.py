"""The answer to a session document, as plain values for JSON."""

import json
from collections.abc import Iterable

from exercises.tape.document import read_document
from exercises.tape.faults import Fault, faults
from exercises.tape.playback import State, play
from exercises.tape.reading import read_session
from exercises.tape.runs import Run
from exercises.tape.session import Session
from exercises.tape.track import Laid, Pulses

Plain = dict[str, object]


def simulate(document: object) -> Plain:
    """What the session's edits leave on the master, and how it plays.

    Raises DocumentError if the document can't be read.
    """
    return answer(read_session(document))


def answer_text(raw: bytes) -> str:
    """The answer to a session document's text, as one line of JSON in plain ASCII."""
    return json.dumps(simulate(read_document(raw)))


def answer(session: Session) -> Plain:
    tape = session.recorded()
    return {
        "tracks": {
            "control": [_pulses(run) for run in tape.control.runs],
            "picture": [_laid(run) for run in tape.picture.runs],
            "sound": [_laid(run) for run in tape.sound.runs],
        },
        "states": _states(play(tape, session.bench)),
        "faults": [_fault(fault) for fault in faults(tape, session.bench)],
    }


def _pulses(run: Run[Pulses]) -> Plain:
    return {"start": run.start, "end": run.end}


def _laid(run: Run[Laid]) -> Plain:
    value = run.value
    return {
        "start": run.start,
        "end": run.end,
        "source": value.source,
        "in": value.frame,
        "generation": value.generation,
        "settled": value.settled,
    }


def _states(states: Iterable[State]) -> list[Plain]:
    return [
        {"start": start, "end": end, "state": state.value, "edit": edit}
        for start, end, state, edit in states
    ]


def _fault(fault: Fault) -> Plain:
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
