"""What to do about the picture of a shot that is laid: again, where it is watched, or nothing."""

from collections.abc import Collection
from dataclasses import dataclass
from enum import StrEnum
from math import log10

from exercises.drills.beliefs import levelled
from exercises.drills.kinds.levels_on_paper.case import Choosing
from exercises.tape import (
    Bench,
    Carried,
    FaultKind,
    Insert,
    Levels,
    Machines,
    Source,
    Take,
    Tape,
    faults,
    record,
)
from exercises.tape.limits import LIMITS

LATER, MONITOR = "level-is-seen-later", "monitor-is-a-meter"
WRONG = {FaultKind.FLAT_PICTURE, FaultKind.CLIPPED_PICTURE}
AT, FRAMES = 1000, 100  # where the shot lies on a tape of its own


class Later(StrEnum):
    AGAIN = "again"
    WATCHED = "watched"
    OTHER = "other"
    GO_ON = "go-on"


TEXTS = {
    Later.AGAIN: "Set the picture level anew, and lay the shot again",
    Later.WATCHED: "Leave the tape, and put it right where it is watched",
    Later.OTHER: "Look for another take, for this one can’t be helped",
    Later.GO_ON: "Go on with the next shot, for nothing is the matter",
}
WHYS = {
    Later.AGAIN: "The edit master itself is off, and the source is not. What is clipped or lost in "
    "noise there no later control brings back; a new copy does.",
    Later.WATCHED: "On the tape, white stands where it belongs. Only the monitor is off, and its "
    "own control puts that right.",
    Later.OTHER: "It was clipped when it was shot. No level brings back what is not on the source "
    "tape.",
    Later.GO_ON: "White passes on the tape, and it looks right as well.",
}


@dataclass(frozen=True, slots=True)
class WhiteShot:
    """IRE of the white on its source and on the edit master, and how it looks on the monitor."""

    source: int
    laid: int
    looks: str = "white"

    def tape(self, bench: Bench) -> Tape:
        levels = Carried(Levels(white=self.source))
        source = Source("A", (Take(0, AT + FRAMES, carried=levels),))
        gain = round(200 * log10(self.laid / self.source))
        machines = Machines(picture_gain=gain)
        shot = Insert(source, AT, AT + FRAMES, AT, picture=True, sound=True, machines=machines)
        return record(Tape.blank(2 * AT).with_pass(0, 2 * AT, "black"), shot, bench, 0)


def next_step(shot: WhiteShot, bench: Bench, beliefs: Collection[str] = ()) -> Later:
    """What to do about it, by the rules or by what somebody believes."""
    tape = shot.tape(bench)
    truly, expected = (
        {fault.kind for fault in faults(*levelled(tape, bench, held))} & WRONG
        for held in ((), beliefs)
    )
    if expected:
        return Later.OTHER if shot.source > LIMITS.clipped_picture else Later.AGAIN
    if truly:
        return Later.WATCHED
    if shot.looks == "white":
        return Later.GO_ON
    return Later.AGAIN if MONITOR in beliefs else Later.WATCHED


def afterwards(shot: WhiteShot, bench: Bench) -> Choosing:
    return Choosing(
        name="next",
        legend="What now?",
        texts={step.value: text for step, text in TEXTS.items()},
        right=lambda beliefs: next_step(shot, bench, beliefs).value,
        beliefs=(LATER, MONITOR),
        why=WHYS[next_step(shot, bench)],
    )
