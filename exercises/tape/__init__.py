"""What two tape machines do to a tape: an exact account in whole frames.

Positions and lengths are whole frames, ranges half-open: ``[start, end)``. Everything
here is a value; an edit makes a new tape. Standard library only.

>>> bench = Bench.default(Rate.R29_97)
>>> shots = Source("A", (Take(0, 1500),))
>>> master = Tape.blank(3000).with_pass(0, 900, "black")
>>> edited = record(master, Assemble(shots, in_=300, out=450, at=900), bench, 0)
>>> [(state.start, state.end, str(state.state)) for state in play(edited, bench)]
[(0, 30, 'relock'), (30, 1050, 'clean'), (1050, 1110, 'no-control'), (1110, 3000, 'no-control')]
"""

from exercises.tape.answer import answer, answer_text, simulate
from exercises.tape.bench import Bench
from exercises.tape.edit import Assemble, Edit, Insert
from exercises.tape.edit_session import EditSession
from exercises.tape.errors import DocumentError, EditRefused, TapeError, TimecodeError
from exercises.tape.explaining import explain
from exercises.tape.faults import Fault, FaultKind, Measured, Severity, Unit, faults
from exercises.tape.from_json import read_edit_session
from exercises.tape.gain_control import AutomaticGain, Limiter
from exercises.tape.history import Carried, History
from exercises.tape.judging import (
    Brief,
    Difference,
    DifferenceKind,
    Economy,
    Judgement,
    Kept,
    Match,
    Pace,
    Wanted,
    judge,
)
from exercises.tape.levels import Levels
from exercises.tape.limits import Limits
from exercises.tape.machines import (
    Drift,
    Machines,
    Player,
    Recorder,
    SoundLevel,
    SoundMode,
)
from exercises.tape.map.tape_map import TapeMap, tape_map
from exercises.tape.marks import Marks, Span
from exercises.tape.passages import Passage, passages
from exercises.tape.planning import NoPlan, Plan, Planned, plan
from exercises.tape.playback import Condition, PlaybackState, play
from exercises.tape.rate import Rate
from exercises.tape.recording import record
from exercises.tape.runs import Run, Runs
from exercises.tape.source import Source, Take
from exercises.tape.tape import SIDES, Side, Tape
from exercises.tape.timecode import frame_of, label
from exercises.tape.track import Laid, Pulses, Track
from exercises.tape.unpulsed import Unpulsed, unpulsed
from exercises.tape.work import TooMuchWork

__all__ = [
    "SIDES",
    "Assemble",
    "AutomaticGain",
    "Bench",
    "Brief",
    "Carried",
    "Condition",
    "Difference",
    "DifferenceKind",
    "DocumentError",
    "Drift",
    "Economy",
    "Edit",
    "EditRefused",
    "EditSession",
    "Fault",
    "FaultKind",
    "History",
    "Insert",
    "Judgement",
    "Kept",
    "Laid",
    "Levels",
    "Limiter",
    "Limits",
    "Machines",
    "Marks",
    "Match",
    "Measured",
    "NoPlan",
    "Pace",
    "Passage",
    "Plan",
    "Planned",
    "PlaybackState",
    "Player",
    "Pulses",
    "Rate",
    "Recorder",
    "Run",
    "Runs",
    "Severity",
    "Side",
    "SoundLevel",
    "SoundMode",
    "Source",
    "Span",
    "Take",
    "Tape",
    "TapeError",
    "TapeMap",
    "TimecodeError",
    "TooMuchWork",
    "Track",
    "Unit",
    "Unpulsed",
    "Wanted",
    "answer",
    "answer_text",
    "explain",
    "faults",
    "frame_of",
    "judge",
    "label",
    "passages",
    "plan",
    "play",
    "read_edit_session",
    "record",
    "simulate",
    "tape_map",
    "unpulsed",
]
