import pytest

from exercises.tape import FaultKind, Severity, Source, Take
from tests.exercises.tape.faults.benchwork import found, insert, limited, tape, told

KIND = FaultKind.SOUND_OUT_OF_STEP
LIPS = tape(Take(0, 500, sync=True), Take(500, 1000, sync=True))


def moved(frames: int) -> list[tuple[int, Severity]]:
    """What is found when new sound is laid so much ahead of its picture; 40 ms a frame."""
    shots = (
        insert(LIPS, 100, 200, 300),
        insert(LIPS, 100 + frames, 200 + frames, 300, tracks="sound"),
    )
    return [(fault.measured.value, fault.severity) for fault in found(KIND, *shots)]


def test_little_is_not_noticed() -> None:
    assert [moved(frames) for frames in (-3, -1, 0, 1)] == [[], [], [], []]


def test_more_is_perceptible_and_then_annoying() -> None:
    assert moved(2) == [(80, Severity.PERCEPTIBLE)]
    assert moved(3) == [(120, Severity.ANNOYING)]
    assert moved(-4) == [(-160, Severity.PERCEPTIBLE)]
    assert moved(-5) == [(-200, Severity.ANNOYING)]


def test_later_of_the_two_edits_is_why() -> None:
    sound, picture = (
        insert(LIPS, 110, 210, 300, tracks="sound"),
        insert(LIPS, 100, 200, 320, tracks="picture"),
    )

    assert told(KIND, sound, picture) == [(320, 400, 1, 1200)]
    assert told(KIND, picture, sound) == [(320, 400, 1, 1200)]


def test_fault_is_where_the_two_lie_together() -> None:
    shots = (
        insert(LIPS, 100, 200, 300),
        insert(LIPS, 120, 140, 310, tracks="picture"),
        insert(LIPS, 600, 610, 330, tracks="picture"),
    )

    assert told(KIND, *shots) == [(310, 330, 1, -400)]


@pytest.mark.parametrize(
    "other",
    [
        tape(Take(0, 500), Take(500, 1000)),  # nothing said to belong together
        tape(Take(0, 500, sync=True), name="B"),  # another tape
    ],
)
def test_picture_that_does_not_belong_is_never_out_of_step(other: Source) -> None:
    shots = (
        insert(LIPS, 100, 200, 300, tracks="sound"),
        insert(other, 105, 205, 300, tracks="picture"),
    )

    assert told(KIND, *shots) == []


def test_takes_of_one_tape_do_not_belong_together() -> None:
    shots = (
        insert(LIPS, 400, 450, 300, tracks="sound"),
        insert(LIPS, 600, 650, 300, tracks="picture"),
    )

    assert told(KIND, *shots) == []


def test_bench_sets_its_own_limits() -> None:
    shots = insert(LIPS, 100, 200, 300), insert(LIPS, 101, 201, 300, tracks="sound")

    assert told(KIND, *shots, bench=limited(sound_early=39)) == [(300, 400, 1, 40)]
