from itertools import pairwise

import pytest

from exercises.tape import Rate
from exercises.tape.ruler import ticks

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
