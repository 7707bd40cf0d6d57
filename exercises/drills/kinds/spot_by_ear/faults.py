"""What can be heard to be wrong, as answers; and which of it the tape model finds."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from itertools import chain

from exercises.tape import Bench, Condition, FaultKind, Tape, faults
from exercises.tape.playback import track_states


class Heard(StrEnum):
    WORD = "clipped-word"
    BREATH = "stray-breath"
    JUMP = "level-jump"
    WEAK = "weak-sound"
    DISTORTED = "distorted-sound"
    PAUSES = "noisy-pauses"
    WAVERS = "wavering-pitch"
    HOLE = "hole"


KINDS = {
    FaultKind.CLIPPED_WORD: Heard.WORD,
    FaultKind.STRAY_BREATH: Heard.BREATH,
    FaultKind.SOUND_LEVEL_JUMP: Heard.JUMP,
    FaultKind.WEAK_SOUND: Heard.WEAK,
    FaultKind.DISTORTED_SOUND: Heard.DISTORTED,
    FaultKind.NOISY_PAUSES: Heard.PAUSES,
}
CONDITIONS = {
    Condition.NO_CONTROL: Heard.HOLE,
    Condition.NO_SOUND: Heard.HOLE,
    Condition.RELOCK: Heard.WAVERS,
    Condition.UNSETTLED_SOUND: Heard.WAVERS,
}


# What is said of a state that has no measurement.
WORN = "The source tape dips there whenever it is played: its edge is worn. No edit did it."
SENTENCES = {
    Heard.WAVERS: "A machine was not locked there, so that the speed of the tape is not steady.",
    Heard.HOLE: "Nothing is heard there: the tape is blank, or no sound was copied.",
}


@dataclass(frozen=True, slots=True)
class SoundStretch:
    """`[start, end)` of the edit master, where one thing is wrong."""

    heard: Heard
    start: int
    end: int


def stretches(tape: Tape, bench: Bench, start: int, end: int) -> list[SoundStretch]:
    """All that is wrong with the sound in `[start, end)` of a tape."""
    within = (
        SoundStretch(each.heard, max(each.start, start), min(each.end, end))
        for each in _found(tape, bench)
        if each.start < end and each.end > start
    )
    return sorted(set(within), key=lambda each: (each.start, each.end, each.heard))


def _found(tape: Tape, bench: Bench) -> Iterator[SoundStretch]:
    control, _, sound = track_states(tape, bench)
    for state in chain(control, sound):
        if state.state in CONDITIONS:
            yield SoundStretch(CONDITIONS[state.state], state.start, state.end)
    for fault in faults(tape, bench):
        if fault.kind in KINDS:
            yield SoundStretch(KINDS[fault.kind], fault.start, fault.end)
