import pytest

from exercises.tape import FaultKind, Machines, Severity, SoundLevel, SoundMode, Tape
from tests.exercises.tape.faults.benchwork import (
    BLACK,
    carrying,
    found,
    insert,
    limited,
    tape,
    told,
)

BY_HAND, LIMITER, AUTOMATIC = SoundMode


def lit(white: int, gain: int | None, kind: FaultKind) -> list[int]:
    """What is measured of a shot with this white, recorded with this gain."""
    shot = insert(carrying(white=white), 0, 100, 500, machines=Machines(picture_gain=gain))
    return [fault.measured.value for fault in found(kind, shot)]


def heard(level: int, mode: SoundMode, gain: int, kind: FaultKind) -> list[int]:
    """What is measured of a shot with sound at this level."""
    machines = Machines(sound=SoundLevel(mode, gain))
    shot = insert(carrying(sound=level), 0, 100, 500, machines=machines)
    return [fault.measured.value for fault in found(kind, shot)]


@pytest.mark.parametrize(
    ("white", "gain", "measured"),
    [
        (80, 0, []),
        (79, 0, [79]),
        (100, -19, []),
        (100, -20, [79]),
        (40, 60, []),
        # Automatic level reaches 6 dB up, and no further.
        (41, None, []),
        (39, None, [78]),
    ],
)
def test_picture_is_flat_under_its_limit(white: int, gain: int | None, measured: list[int]) -> None:
    assert lit(white, gain, FaultKind.FLAT_PICTURE) == measured


@pytest.mark.parametrize(
    ("white", "gain", "measured"),
    [
        (110, 0, []),
        (111, 0, [111]),
        (100, 8, []),
        (100, 9, [111]),
        (110, None, []),
        # What was clipped on the source stays so.
        (120, None, [120]),
        (120, -20, [120]),
    ],
)
def test_picture_is_clipped_over_its_limit(
    white: int, gain: int | None, measured: list[int]
) -> None:
    assert lit(white, gain, FaultKind.CLIPPED_PICTURE) == measured


@pytest.mark.parametrize(
    ("level", "mode", "gain", "measured"),
    [
        (-100, BY_HAND, 0, []),
        (-101, BY_HAND, 0, [-101]),
        (-201, BY_HAND, 100, [-101]),
        # A limiter lifts nothing.
        (-101, LIMITER, 0, [-101]),
        # Automatic gain reaches 20 dB up.
        (-250, AUTOMATIC, 0, []),
        (-301, AUTOMATIC, 0, [-101]),
        (-301, AUTOMATIC, 20, []),
    ],
)
def test_sound_is_weak_under_its_limit(
    level: int, mode: SoundMode, gain: int, measured: list[int]
) -> None:
    assert heard(level, mode, gain, FaultKind.WEAK_SOUND) == measured


@pytest.mark.parametrize(
    ("level", "mode", "gain", "measured"),
    [
        (30, BY_HAND, 0, []),
        (31, BY_HAND, 0, [31]),
        (0, BY_HAND, 31, [31]),
        (0, LIMITER, 100, []),
        (0, AUTOMATIC, 100, []),
        # What was distorted on the source stays so.
        (60, BY_HAND, -60, [60]),
        (60, LIMITER, 0, [60]),
    ],
)
def test_sound_is_distorted_over_its_limit(
    level: int, mode: SoundMode, gain: int, measured: list[int]
) -> None:
    assert heard(level, mode, gain, FaultKind.DISTORTED_SOUND) == measured


@pytest.mark.parametrize(
    ("level", "mode", "gain", "measured"),
    [
        # Of 20 dB over its threshold, a limiter of 20 to 1 takes 19.
        (0, LIMITER, 42, []),
        (0, LIMITER, 43, [41]),
        (-100, LIMITER, 100, []),
        (120, LIMITER, 80, [190]),
        (0, BY_HAND, 100, []),
        (0, AUTOMATIC, 100, []),
    ],
)
def test_sound_is_pressed_where_a_limiter_holds_down_all_of_it(
    level: int, mode: SoundMode, gain: int, measured: list[int]
) -> None:
    assert heard(level, mode, gain, FaultKind.PRESSED_SOUND) == measured


def test_fault_lasts_as_long_as_the_recording_by_the_edit_that_made_it() -> None:
    flat = carrying(white=60)
    flatly = Machines(picture_gain=0)
    shots = (
        insert(flat, 0, 100, 500, machines=flatly),
        insert(tape(name="B"), 0, 20, 540),
        insert(flat, 40, 60, 540, machines=flatly),
    )

    assert told(FaultKind.FLAT_PICTURE, *shots[:2]) == [(500, 540, 0, 60), (560, 600, 0, 60)]
    assert told(FaultKind.FLAT_PICTURE, *shots) == [
        (500, 540, 0, 60),
        (540, 560, 2, 60),
        (560, 600, 0, 60),
    ]


def test_takes_of_one_edit_are_one_fault_with_the_worst_of_them() -> None:
    dim, dimmer = carrying(white=70).takes[0], carrying(white=50).takes[0]
    reel = tape(
        type(dim)(0, 50, carried=dim.carried),
        type(dim)(50, 100, carried=dimmer.carried),
    )

    shot = insert(reel, 0, 100, 500, machines=Machines(picture_gain=0))

    assert told(FaultKind.FLAT_PICTURE, shot) == [(500, 600, 0, 50)]


def test_worse_level_annoys_more() -> None:
    def severity(white: int) -> Severity:
        shot = insert(carrying(white=white), 0, 100, 500, machines=Machines(picture_gain=0))
        return found(FaultKind.FLAT_PICTURE, shot)[0].severity

    assert [severity(white) for white in (79, 70, 69, 60, 59, 50, 49, 10)] == [
        Severity.PERCEPTIBLE,
        Severity.PERCEPTIBLE,
        Severity.SLIGHTLY_ANNOYING,
        Severity.SLIGHTLY_ANNOYING,
        Severity.ANNOYING,
        Severity.ANNOYING,
        Severity.VERY_ANNOYING,
        Severity.VERY_ANNOYING,
    ]


def test_bench_sets_its_own_limits() -> None:
    shot = insert(carrying(white=90), 0, 100, 500, machines=Machines(picture_gain=0))

    assert told(FaultKind.FLAT_PICTURE, shot, bench=limited(flat_picture=91)) == [(500, 600, 0, 90)]


def test_nothing_to_measure_has_no_level() -> None:
    strict = limited(flat_picture=140, clipped_picture=140, weak_sound=100, distorted_sound=100)
    named = Tape.blank(100).with_pass(0, 100, "black")

    for black in (BLACK, named):
        assert told(FaultKind.FLAT_PICTURE, on=black, bench=strict) == []
        assert told(FaultKind.WEAK_SOUND, on=black, bench=strict) == []
    bars = Tape.blank(100).with_pass(0, 100, "bars")
    assert told(FaultKind.FLAT_PICTURE, on=bars, bench=strict) == [(0, 100, None, 100)]
