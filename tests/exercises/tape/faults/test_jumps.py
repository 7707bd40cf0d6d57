import pytest

from exercises.tape import FaultKind, Insert, Machines, Recorder, SoundLevel, SoundMode, Tape
from tests.exercises.tape.faults.benchwork import BLACK, carrying, insert, limited, told

FIRST = insert(carrying(), 0, 100, 400)


def second(*, white: int = 100, sound: int = 0, gain: int = 0, mode: str = "by hand") -> Insert:
    machines = Machines(picture_gain=0, sound=SoundLevel(SoundMode(mode), gain))
    return insert(carrying(white=white, sound=sound), 300, 400, 500, machines=machines)


@pytest.mark.parametrize(
    ("white", "steps"), [(90, []), (89, [11]), (110, []), (111, [11]), (100, [])]
)
def test_white_jumps_beyond_the_step_allowed(white: int, steps: list[int]) -> None:
    assert told(FaultKind.PICTURE_LEVEL_JUMP, FIRST, second(white=white)) == [
        (500, 501, 1, step) for step in steps
    ]


@pytest.mark.parametrize(
    ("sound", "gain", "mode", "steps"),
    [
        (-30, 0, "by hand", []),
        (-31, 0, "by hand", [31]),
        (-31, 31, "by hand", []),
        (0, -50, "by hand", [50]),
        (0, 100, "by hand", [100]),
        (0, 100, "limiter", []),
        # Automatic gain brings it to line-up, as far as it reaches.
        (-150, 0, "automatic", []),
        (-240, 0, "automatic", [40]),
    ],
)
def test_sound_jumps_beyond_the_step_allowed(
    sound: int, gain: int, mode: str, steps: list[int]
) -> None:
    shot = second(sound=sound, gain=gain, mode=mode)

    assert told(FaultKind.SOUND_LEVEL_JUMP, FIRST, shot) == [(500, 501, 1, step) for step in steps]


def test_earlier_of_two_neighbours_jumps_when_it_was_laid_later() -> None:
    shots = second(), insert(carrying(sound=-60), 0, 100, 400)

    assert told(FaultKind.SOUND_LEVEL_JUMP, *shots) == [(500, 501, 1, 60)]


def test_gain_turned_between_two_recordings_jumps_though_the_sound_goes_on() -> None:
    going_on = insert(carrying(), 100, 200, 500, machines=Machines(sound=SoundLevel(gain=-60)))

    assert told(FaultKind.SOUND_LEVEL_JUMP, FIRST, going_on) == [(500, 501, 1, 60)]


def test_nothing_jumps_beside_black_or_across_a_hole() -> None:
    dim = Machines(picture_gain=-20)
    far = insert(carrying(sound=-60), 0, 100, 501, machines=dim)

    for tape in (BLACK, Tape.blank(1000)):
        assert told(FaultKind.SOUND_LEVEL_JUMP, FIRST, far, on=tape) == []
        assert told(FaultKind.PICTURE_LEVEL_JUMP, FIRST, far, on=tape) == []


def test_bench_sets_its_own_steps() -> None:
    assert told(
        FaultKind.SOUND_LEVEL_JUMP, FIRST, second(sound=-11), bench=limited(sound_step=10)
    ) == [(500, 501, 1, 11)]


def from_recorder(name: str, at: int, *, tracks: str = "both") -> Insert:
    machines = Machines(recorder=Recorder(name))
    return insert(carrying(), at, at + 100, at, machines=machines, tracks=tracks)


def test_neighbours_from_two_recorders_are_mixed() -> None:
    shots = FIRST, from_recorder("the lent one", 500), from_recorder("the lent one", 600)
    black = (700, 701, 2, 2)  # recorded by the bench's own

    assert told(FaultKind.MIXED_RECORDERS, *shots) == [(500, 501, 1, 2), black]
    assert told(FaultKind.MIXED_RECORDERS, *shots, bench=limited(recorders=2)) == []


def test_sound_may_come_from_another_recorder() -> None:
    shots = FIRST, from_recorder("the lent one", 500, tracks="sound")

    assert told(FaultKind.MIXED_RECORDERS, *shots) == []
