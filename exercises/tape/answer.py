"""The answer to a session document, as plain values for JSON."""

import json

from exercises.tape.document import read_document
from exercises.tape.faults import faults
from exercises.tape.plain import Plain, plain_fault, plain_judgement, plain_plan, plain_state
from exercises.tape.playback import play
from exercises.tape.reading import read_session
from exercises.tape.runs import Run
from exercises.tape.session import Session
from exercises.tape.track import Laid, Pulses


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
    asked: Plain = {}
    if session.brief:
        judgement = session.judged(session.brief)
        asked["judgement"] = plain_judgement(judgement, session.bench.rate)
        if session.plans:
            asked["plan"] = plain_plan(session.planned(session.brief), session.bench.rate)
    return {
        "tracks": {
            "control": [_pulses(run) for run in tape.control.runs],
            "picture": [_laid(run) for run in tape.picture.runs],
            "sound": [_laid(run) for run in tape.sound.runs],
        },
        "states": [plain_state(state) for state in play(tape, session.bench)],
        "faults": [plain_fault(fault) for fault in faults(tape, session.bench)],
        **asked,
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
