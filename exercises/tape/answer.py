"""The answer to a session document, as plain values for JSON."""

import json

from exercises.tape.edit_session import EditSession
from exercises.tape.errors import DocumentError
from exercises.tape.faults import faults
from exercises.tape.from_json import read_edit_session
from exercises.tape.from_json.document import read_document
from exercises.tape.playback import play
from exercises.tape.runs import Run
from exercises.tape.tape import Tape
from exercises.tape.to_json import Plain, plain_fault, plain_judgement, plain_plan, plain_state
from exercises.tape.track import Laid, Pulses
from exercises.tape.work import BYTES, USUAL, TooMuchWork, limited, working_on


def simulate(document: object, *, steps: int = USUAL) -> Plain:
    """What the session's edits leave on the master, and how it plays.

    Raises DocumentError if the document can't be read, or takes more than so many `steps`
    of work (see `work.py`).
    """
    try:
        with limited(steps):
            return answer(read_edit_session(document))
    except TooMuchWork as refused:
        raise DocumentError(refused.path, str(refused)) from None


def answer_text(raw: bytes, *, steps: int = USUAL) -> str:
    """The answer to a session document's text, as one line of JSON in plain ASCII."""
    if len(raw) > steps * BYTES:
        raise DocumentError("", str(TooMuchWork(steps)))
    return json.dumps(simulate(read_document(raw), steps=steps))


def answer(session: EditSession) -> Plain:
    tape = session.recorded()
    with working_on("edits" if session.edits else "master"):
        found = _found(tape, session)
    if session.brief is None:
        return found
    with working_on("brief"):
        judgement = plain_judgement(session.judged(session.brief), session.bench.rate)
    found["judgement"] = judgement
    if session.plans:
        with working_on("plan"):
            found["plan"] = plain_plan(session.planned(session.brief), session.bench.rate)
    return found


def _found(tape: Tape, session: EditSession) -> Plain:
    """What is on the tape, and how it plays."""
    return {
        "tracks": {
            "control": [_pulses(run) for run in tape.control.runs],
            "picture": [_laid(run) for run in tape.picture.runs],
            "sound": [_laid(run) for run in tape.sound.runs],
        },
        "states": [plain_state(state) for state in play(tape, session.bench)],
        "faults": [plain_fault(fault) for fault in faults(tape, session.bench)],
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
