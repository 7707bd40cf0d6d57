from itertools import pairwise

import pytest

from exercises.tape import Rate
from exercises.tape.map.ruler import ticks
from exercises.tape.timecode import frame_at, label

LENGTHS = [*range(12, 3_000), *range(3_000, 200_000, 487), *range(200_000, 2_600_000, 40_009)]


@pytest.mark.parametrize("rate", Rate)
@pytest.mark.parametrize("start", [0, 17, 12_345])
def test_ruler_has_four_to_seven_even_ticks_inside_the_window(rate: Rate, start: int) -> None:
    for length in LENGTHS:
        at = ticks(start, start + length, rate)
        assert 4 <= len(at) <= 7, length
        assert len({after - before for before, after in pairwise(at)}) == 1
        assert start <= at[0] <= at[-1] < start + length


@pytest.mark.parametrize("rate", Rate)
def test_ruler_of_a_minute_or_an_hour_stands_at_round_times(rate: Rate) -> None:
    second = rate.nominal

    assert ticks(0, 60 * second, rate) == tuple(range(0, 60 * second, 10 * second))
    assert ticks(0, 3600 * second, rate) == tuple(range(0, 3600 * second, 600 * second))
    assert ticks(5 * second, 25 * second, rate) == tuple(range(6 * second, 25 * second, 3 * second))


@pytest.mark.parametrize("length", range(1, 12))
def test_ruler_of_a_few_frames_has_what_fits(length: int) -> None:
    assert min(length, 4) <= len(ticks(100, 100 + length, Rate.R25)) <= 7


@pytest.mark.parametrize("start", [0, 1798, 17_982, 107_892, 2_589_000])
def test_ticks_of_a_drop_frame_window_stand_at_round_labels(start: int) -> None:
    """At a full second, or at the first label of a minute that has no 00."""
    for seconds in (30, 60, 240, 3600):
        at = ticks(start, start + 30 * seconds, Rate.R29_97, drop=True)
        ends = {label(frame, Rate.R29_97, drop=True)[-5:] for frame in at if frame < 2_589_408}

        assert 3 <= len(at) <= 8
        assert {end[-2:] for end in ends - {"00;02"}} <= {"00"}


def test_frame_at_a_count_of_labels_undoes_the_label() -> None:
    for frame in range(40_000):
        _, minute, rest = label(frame, Rate.R29_97, drop=True).split(":", 2)
        second, frames = map(int, rest.split(";"))

        assert frame_at((60 * int(minute) + second) * 30 + frames) == frame
