import pytest

from exercises.tape import Fault, FaultKind, Measured, Severity, Unit
from exercises.tape.faults.wording import LABELS, SENTENCES, amount, label, sentence

TOLD = [
    (FaultKind.FLASH_FRAMES, 2, Unit.FRAMES, 3, "2 frames of something else between two shots"),
    (
        FaultKind.CLIPPED_WORD,
        1,
        Unit.FRAMES,
        0,
        "an edit point inside a word cuts off 1 frame of it",
    ),
    (FaultKind.STRAY_BREATH, 5, Unit.FRAMES, 0, "5 frames of a breath left at the edit point"),
    (
        *(FaultKind.SOUND_LEVEL_JUMP, 45, Unit.DECIBEL_TENTHS, 30),
        "the sound jumps by 4.5 dB at the cut (up to 3 dB pass)",
    ),
    (
        *(FaultKind.WEAK_SOUND, -140, Unit.DECIBEL_TENTHS, -100),
        "weak sound: 14 dB under line-up (from 10 dB under line-up on it passes)",
    ),
    (
        *(FaultKind.DISTORTED_SOUND, 60, Unit.DECIBEL_TENTHS, 0),
        "distorted sound: 6 dB over line-up (up to line-up level passes)",
    ),
    (
        *(FaultKind.PRESSED_SOUND, 86, Unit.DECIBEL_TENTHS, 40),
        "pressed sound: the limiter takes 8.6 dB off the speech (up to 4 dB passes)",
    ),
    (
        *(FaultKind.BENT_VERTICALS, 25, Unit.MICROSECOND_TENTHS, 10),
        "bent verticals: skew made a step of 2.5 µs in the copy",
    ),
    (
        *(FaultKind.RECORDER_OFF_POSITION, 8, Unit.PERCENT, 0),
        "the recorder’s tracking was 8 % of a track off its fixed position",
    ),
    (
        *(FaultKind.SOUND_OUT_OF_STEP, 67, Unit.MILLISECONDS, 45),
        "the sound comes 67 ms before its picture",
    ),
    (
        *(FaultKind.SOUND_OUT_OF_STEP, -133, Unit.MILLISECONDS, -125),
        "the sound comes 133 ms after its picture",
    ),
]


@pytest.mark.parametrize(("kind", "value", "unit", "limit", "words"), TOLD)
def test_fault_is_told_from_its_measurement(
    kind: FaultKind, value: int, unit: Unit, limit: int, words: str
) -> None:
    measured = Measured(value, unit, limit)

    assert sentence(Fault(kind, "sound", 0, 9, Severity.ANNOYING, 1, measured)) == words


def test_every_kind_has_a_label_and_a_sentence() -> None:
    assert set(LABELS) == set(SENTENCES) == set(FaultKind)
    measured = Measured(2, Unit.FRAMES, 3)
    flash = Fault(FaultKind.FLASH_FRAMES, "picture", 0, 2, Severity.ANNOYING, 1, measured)
    assert label(flash) == "flash frames"


def test_one_is_not_many() -> None:
    assert [amount(count, Unit.FRAMES) for count in (0, 1, 2)] == [
        "0 frames",
        "1 frame",
        "2 frames",
    ]
    assert amount(1, Unit.MILLISECONDS) == "1 ms"
