import pytest

from exercises.tape import Source, Take

REEL = Source("reel", (Take(10, 20), Take(20, 30, generation=2), Take(40, 50)))


@pytest.mark.parametrize(
    ("frame", "run_up"),
    [
        (0, 0),
        (9, 0),
        (10, 0),
        (19, 9),
        (20, 0),
        (29, 9),
        (30, 0),
        (39, 0),
        (40, 0),
        (49, 9),
        (50, 0),
    ],
)
def test_run_up_is_counted_from_the_start_of_the_take(frame: int, run_up: int) -> None:
    assert REEL.run_up(frame) == run_up


def test_take_at_is_the_take_that_holds_the_frame() -> None:
    takes = [REEL.take_at(frame) for frame in (9, 10, 19, 20, 29, 30, 40, 50)]

    first, second, third = REEL.takes
    assert takes == [None, first, first, second, second, None, third, None]


@pytest.mark.parametrize(
    ("start", "end", "expected"),
    [
        (0, 10, ()),
        (0, 11, REEL.takes[:1]),
        (19, 20, REEL.takes[:1]),
        (20, 41, REEL.takes[1:]),
        (30, 40, ()),
        (0, 60, REEL.takes),
        (50, 60, ()),
    ],
)
def test_takes_in_are_those_with_a_frame_in_the_range(
    start: int, end: int, expected: tuple[Take, ...]
) -> None:
    assert tuple(REEL.takes_in(start, end)) == expected


def test_blank_source_has_no_run_up() -> None:
    assert Source("blank", ()).run_up(5) == 0
