"""A worn edge of a tape: the level falls where it is said to, and nowhere else."""

import numpy as np
import pytest

from exercises.signal.sound.samples import RATE, average_level
from exercises.signal.sound.tones import line_up_tone
from exercises.signal.sound.worn import CALM, DIPS, RAMP, ROUND, Worn, dips

TONE = line_up_tone()


def level(start: int, end: int, *, since: int = 0) -> float:
    """Tenths of a dB over line-up of a worn tone between two ms."""
    first, last = (each * RATE // 1000 for each in (start, end))
    return average_level(Worn(TONE, since).read(first, last - first))


@pytest.mark.parametrize("since", [0, 777])
@pytest.mark.parametrize("dip", DIPS)
def test_level_falls_where_it_dips(dip: tuple[int, int, int], since: int) -> None:
    start, end, depth = dip

    fallen = level(since + start + RAMP, since + end - RAMP, since=since)
    assert fallen == pytest.approx(depth, abs=2)


def test_level_is_as_it_was_between_dips() -> None:
    assert level(DIPS[0].end, DIPS[1].start) == pytest.approx(0, abs=1)


@pytest.mark.parametrize("calm", CALM)
def test_no_dip_comes_near_where_it_is_calm(calm: int) -> None:
    assert list(dips(calm - 400, calm + 400)) == []


def test_dips_come_again_round_after_round() -> None:
    first, second = (list(dips(at, at + ROUND)) for at in (0, ROUND))

    assert len(first) == len(second) == len(DIPS)
    assert [after.start - before.start for before, after in zip(first, second, strict=True)] == (
        [ROUND] * len(DIPS)
    )


def test_sound_is_the_same_wherever_it_is_entered() -> None:
    worn = Worn(TONE, 300)

    assert np.array_equal(worn.read(0, RATE)[RATE // 2 :], worn.read(RATE // 2, RATE // 2))
