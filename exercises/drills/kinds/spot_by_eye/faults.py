"""What can be seen to be wrong, as answers; and which of it the tape model finds."""

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from enum import StrEnum

from exercises.tape import Bench, Condition, FaultKind, Tape, faults, play


class Seen(StrEnum):
    NOISE_BAND = "noise-band"
    BENT = "bent-verticals"
    FLAT = "flat-picture"
    CLIPPED = "clipped-picture"
    JUMP = "level-jump"
    FLASH = "flash-frames"
    GENERATIONS = "generations"
    ROLL = "roll"
    SNOW = "snow"
    WORN = "worn-tape"


KINDS = {
    FaultKind.NOISE_BAND: Seen.NOISE_BAND,
    FaultKind.BENT_VERTICALS: Seen.BENT,
    FaultKind.FLAT_PICTURE: Seen.FLAT,
    FaultKind.CLIPPED_PICTURE: Seen.CLIPPED,
    FaultKind.PICTURE_LEVEL_JUMP: Seen.JUMP,
    FaultKind.FLASH_FRAMES: Seen.FLASH,
    FaultKind.TOO_MANY_GENERATIONS: Seen.GENERATIONS,
}
CONDITIONS = {
    Condition.NO_CONTROL: Seen.SNOW,
    Condition.NO_PICTURE: Seen.SNOW,
    Condition.RELOCK: Seen.ROLL,
    Condition.UNSETTLED: Seen.ROLL,
}


# What is said of a state that has no measurement.
SENTENCES = {
    Seen.ROLL: "A machine was not locked there: the picture rolls and leans.",
    Seen.SNOW: "The tape is blank there: an assemble has wiped it, the pulses too.",
    Seen.WORN: "The tape that it was copied from has such streaks whenever it is played. No edit "
    "did it.",
}
NOT_COPIED = "No picture was recorded there: the take had ended, and the player gave none."


class Where(StrEnum):
    BEFORE = "before"
    AFTER = "after"
    BOTH = "both"
    CUT = "cut"


@dataclass(frozen=True, slots=True)
class PictureStretch:
    """`[start, end)` of the edit master, where one thing is wrong."""

    seen: Seen
    start: int
    end: int


def stretches(tape: Tape, bench: Bench, start: int, end: int) -> list[PictureStretch]:
    """All that is wrong with the picture in `[start, end)` of a tape."""
    within = (
        PictureStretch(each.seen, max(each.start, start), min(each.end, end))
        for each in _found(tape, bench)
        if each.start < end and each.end > start
    )
    return sorted(set(within), key=lambda each: (each.start, each.end, each.seen))


def without_measurement(found: PictureStretch, tape: Tape) -> list[str]:
    """What is said of it; nothing, where the model has a figure."""
    if found.seen is Seen.SNOW and tape.control.at(found.start):
        return [NOT_COPIED]
    return [SENTENCES[found.seen]] if found.seen in SENTENCES else []


def worn(tape: Tape, tapes: Collection[str], start: int, end: int) -> list[PictureStretch]:
    """Where, in `[start, end)`, lies what was copied from one of these tapes, which are worn."""
    return [
        PictureStretch(Seen.WORN, max(run.start, start), min(run.end, end))
        for run in tape.picture.runs
        if run.value.source in tapes and run.start < end and run.end > start
    ]


def _found(tape: Tape, bench: Bench) -> Iterator[PictureStretch]:
    for state in play(tape, bench):
        if state.state in CONDITIONS:
            yield PictureStretch(CONDITIONS[state.state], state.start, state.end)
    for fault in faults(tape, bench):
        if fault.kind in KINDS:
            yield PictureStretch(KINDS[fault.kind], fault.start, fault.end)


def where(found: list[PictureStretch], cut: int) -> Where:
    """On which side of the cut; or at the cut, where it is between the two shots."""
    if found[0].seen in {Seen.JUMP, Seen.FLASH}:
        return Where.CUT
    before = any(each.start < cut for each in found)
    after = any(each.end > cut for each in found)
    return Where.BOTH if before and after else Where.BEFORE if before else Where.AFTER
