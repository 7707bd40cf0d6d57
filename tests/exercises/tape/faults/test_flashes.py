import pytest

from exercises.tape import FaultKind, Severity, Source, Take, Tape
from tests.exercises.tape.faults.benchwork import BENCH, found, insert, limited, tape, told

A, B = tape(Take(0, 1000)), tape(Take(0, 1000), name="B")


def test_leftover_between_two_shots_is_a_flash_by_the_later_edit() -> None:
    assert told(FaultKind.FLASH_FRAMES, insert(A, 0, 100, 200), insert(B, 0, 100, 302)) == [
        (300, 302, 1, 2)
    ]


def test_rest_of_a_shot_is_a_flash_by_the_edit_that_left_it() -> None:
    shots = insert(A, 0, 100, 200), insert(B, 0, 100, 300), insert(A, 500, 598, 200)

    assert told(FaultKind.FLASH_FRAMES, *shots) == [(298, 300, 2, 2)]


def test_blank_frames_between_two_shots_are_a_flash() -> None:
    shots = insert(A, 0, 100, 200), insert(B, 0, 100, 303)

    assert told(FaultKind.FLASH_FRAMES, *shots, on=Tape.blank(1000)) == [(300, 303, 1, 3)]


def test_flash_of_two_kinds_is_two_flashes() -> None:
    shots = insert(A, 0, 102, 200), insert(B, 0, 100, 400), insert(A, 500, 600, 200)
    with_gap = *shots, insert(A, 700, 795, 304)

    assert told(FaultKind.FLASH_FRAMES, *with_gap, on=Tape.blank(1000)) == [
        (300, 302, 2, 2),
        (302, 304, 3, 2),
        (399, 400, 3, 1),
    ]


@pytest.mark.parametrize(
    ("frames", "severity"),
    [(1, Severity.SLIGHTLY_ANNOYING), (2, Severity.ANNOYING), (3, Severity.VERY_ANNOYING)],
)
def test_longer_flash_annoys_more(frames: int, severity: Severity) -> None:
    shots = insert(A, 0, 100, 200), insert(B, 0, 100, 300 + frames)

    assert [fault.severity for fault in found(FaultKind.FLASH_FRAMES, *shots)] == [severity]


def test_four_frames_are_a_shot_unless_the_bench_says_otherwise() -> None:
    shots = insert(A, 0, 100, 200), insert(B, 0, 100, 304)

    assert told(FaultKind.FLASH_FRAMES, *shots) == []
    assert told(FaultKind.FLASH_FRAMES, *shots, bench=limited(flash_frames=4)) == [(300, 304, 1, 4)]


def test_short_recording_with_nothing_beside_it_is_no_flash() -> None:
    shots = insert(A, 0, 3, 0), insert(A, 0, 3, 500), insert(A, 0, 3, 997)

    assert told(FaultKind.FLASH_FRAMES, *shots, on=Tape.blank(1000)) == []


def test_shot_that_goes_on_in_another_recording_is_one_shot() -> None:
    shots = insert(A, 0, 2, 200), insert(A, 2, 4, 202), insert(A, 4, 100, 204)

    assert told(FaultKind.FLASH_FRAMES, *shots) == []


def test_sound_has_no_flash_frames() -> None:
    shots = (
        insert(A, 0, 100, 200, tracks="sound"),
        insert(B, 0, 100, 302, tracks="sound"),
    )

    assert told(FaultKind.FLASH_FRAMES, *shots) == []


def test_unsettled_start_of_a_shot_is_no_flash() -> None:
    late: Source = tape(Take(98, 1000))
    bench = type(BENCH)(BENCH.rate, lock=5, relock=0, erase_gap=0)

    assert told(FaultKind.FLASH_FRAMES, insert(late, 100, 200, 300), bench=bench) == []
