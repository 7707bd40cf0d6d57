"""Which mistake matters most: first what leaves a tape that no machine can play."""

from collections.abc import Sequence

from exercises.worktop.debrief.mistakes.kinds import MistakeKind
from exercises.worktop.debrief.mistakes.mistake import Mistake

WORST_FIRST = (
    MistakeKind.NO_PULSES,
    MistakeKind.SOURCE_RUN_UP,
    MistakeKind.MASTER_RUN_UP,
    MistakeKind.HOLE,
    MistakeKind.NEW_TAKE,
    MistakeKind.RECORDED_OVER,
    MistakeKind.TRACK_LEFT,
    MistakeKind.WIPED,
    MistakeKind.TRACKING,
    MistakeKind.RECORDER_TRACKING,
    MistakeKind.TWO_RECORDERS,
    MistakeKind.SKEW,
    MistakeKind.SOUND_LEVEL,
    MistakeKind.PICTURE_LEVEL,
    MistakeKind.BLANK_SOURCE,
    MistakeKind.MISPLACED,
    MistakeKind.WRONG_SHOT,
    MistakeKind.OUT_OF_STEP,
    MistakeKind.CUT_SHORT,
    MistakeKind.WORDS,
    MistakeKind.FLASH,
    MistakeKind.EXTRA,
    MistakeKind.GENERATIONS,
    MistakeKind.NOT_LAID,
)


def worst(found: Sequence[Mistake]) -> Mistake:
    """Of some mistakes, one at least; what an edit of the learner's did comes before the rest."""
    return min(found, key=lambda each: (not each.made, WORST_FIRST.index(each.kind)))
