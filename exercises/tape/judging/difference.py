from dataclasses import dataclass
from enum import StrEnum

from exercises.tape.tape import TrackName


class DifferenceKind(StrEnum):
    """What can be other than the brief wants it.

    Lost is what was there before and is now blank; touched is what had to stay and was
    recorded over; extra is new where nothing is wanted.
    """

    EARLY = "early"
    LATE = "late"
    MISSING = "missing"
    WRONG_SHOT = "wrong-shot"
    WRONG_SOUND = "wrong-sound"
    PICTURE_LOST = "picture-lost"
    SOUND_LOST = "sound-lost"
    PULSES_LOST = "pulses-lost"
    TOUCHED = "touched"
    EXTRA = "extra"
    GENERATION = "generation"


WRONG = {"picture": DifferenceKind.WRONG_SHOT, "sound": DifferenceKind.WRONG_SOUND}
LOST = {
    "picture": DifferenceKind.PICTURE_LOST,
    "sound": DifferenceKind.SOUND_LOST,
    "control": DifferenceKind.PULSES_LOST,
}


@dataclass(frozen=True, slots=True)
class Difference:
    """``[start, end)`` of a track that is not as the brief wants it.

    shot  which of the shots wanted on that track, counted from 0; None for what had to
          stay, and for what is extra
    by    how many frames early or late, or how many generations too many
    edit  the edit that last recorded or wiped there
    """

    kind: DifferenceKind
    track: TrackName
    start: int
    end: int
    shot: int | None = None
    by: int | None = None
    edit: int | None = None


@dataclass(frozen=True, slots=True)
class Match:
    """``[start, end)`` of a wanted shot that is there, within its tolerance."""

    track: TrackName
    start: int
    end: int
    shot: int
