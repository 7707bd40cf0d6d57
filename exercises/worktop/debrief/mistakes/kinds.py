"""The mistakes that a bench allows, and what the tape shows of each."""

from collections.abc import Mapping
from enum import StrEnum

from exercises.tape import DifferenceKind, FaultKind


class MistakeKind(StrEnum):
    NOT_LAID = "not-laid"
    TRACK_LEFT = "track-left"
    WIPED = "wiped"
    RECORDED_OVER = "recorded-over"
    NO_PULSES = "no-pulses"
    HOLE = "hole"
    SOURCE_RUN_UP = "source-run-up"
    MASTER_RUN_UP = "master-run-up"
    NEW_TAKE = "new-take"
    CUT_SHORT = "cut-short"
    BLANK_SOURCE = "blank-source"
    MISPLACED = "misplaced"
    WRONG_SHOT = "wrong-shot"
    EXTRA = "extra"
    FLASH = "flash"
    WORDS = "words"
    OUT_OF_STEP = "out-of-step"
    TRACKING = "tracking"
    SKEW = "skew"
    RECORDER_TRACKING = "recorder-tracking"
    TWO_RECORDERS = "two-recorders"
    PICTURE_LEVEL = "picture-level"
    SOUND_LEVEL = "sound-level"
    GENERATIONS = "generations"


OF_FAULT: Mapping[str, MistakeKind] = {
    FaultKind.FLASH_FRAMES: MistakeKind.FLASH,
    FaultKind.CLIPPED_WORD: MistakeKind.WORDS,
    FaultKind.STRAY_BREATH: MistakeKind.WORDS,
    FaultKind.PICTURE_LEVEL_JUMP: MistakeKind.PICTURE_LEVEL,
    FaultKind.SOUND_LEVEL_JUMP: MistakeKind.SOUND_LEVEL,
    FaultKind.FLAT_PICTURE: MistakeKind.PICTURE_LEVEL,
    FaultKind.CLIPPED_PICTURE: MistakeKind.PICTURE_LEVEL,
    FaultKind.WEAK_SOUND: MistakeKind.SOUND_LEVEL,
    FaultKind.DISTORTED_SOUND: MistakeKind.SOUND_LEVEL,
    FaultKind.PRESSED_SOUND: MistakeKind.SOUND_LEVEL,
    FaultKind.NOISY_PAUSES: MistakeKind.SOUND_LEVEL,
    FaultKind.NOISE_BAND: MistakeKind.TRACKING,
    FaultKind.BENT_VERTICALS: MistakeKind.SKEW,
    FaultKind.MIXED_RECORDERS: MistakeKind.TWO_RECORDERS,
    FaultKind.RECORDER_OFF_POSITION: MistakeKind.RECORDER_TRACKING,
    FaultKind.TOO_MANY_GENERATIONS: MistakeKind.GENERATIONS,
    FaultKind.SOUND_OUT_OF_STEP: MistakeKind.OUT_OF_STEP,
}

OF_DIFFERENCE: Mapping[str, MistakeKind] = {
    DifferenceKind.EARLY: MistakeKind.MISPLACED,
    DifferenceKind.LATE: MistakeKind.MISPLACED,
    DifferenceKind.EXTRA: MistakeKind.EXTRA,
    DifferenceKind.GENERATION: MistakeKind.GENERATIONS,
    DifferenceKind.TOUCHED: MistakeKind.RECORDED_OVER,
}

JUMPS = (FaultKind.PICTURE_LEVEL_JUMP, FaultKind.SOUND_LEVEL_JUMP)
