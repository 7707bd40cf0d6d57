from math import inf

import numpy as np
import pytest

from exercises.signal.meters import vu
from exercises.signal.sound.samples import RATE
from tests.waves import tone


def test_needle_begins_at_rest_and_comes_to_its_level() -> None:
    moved = vu.deflections(tone(0, seconds=2))

    assert moved[0] < 0.001
    assert moved[-1] == pytest.approx(1, abs=0.002)


@pytest.mark.parametrize("per_second", [10, 25])
def test_readings_are_the_needle_at_their_moments(per_second: int) -> None:
    samples = tone(-30, seconds=1.3)
    moved = vu.deflections(samples)

    found = vu.readings(samples, per_second=per_second)

    step = RATE // per_second
    expected = [vu.reading(float(each)) for each in moved[step - 1 :: step]]
    assert found == expected


def test_silence_is_at_rest() -> None:
    assert vu.readings(np.zeros(RATE, np.float32), per_second=2) == [-inf, -inf]
    assert vu.peak(np.zeros(RATE, np.float32)) == -inf


def test_peak_of_nothing_is_at_rest() -> None:
    assert vu.peak(np.empty(0, np.float32)) == -inf


def test_peak_is_the_highest_reading() -> None:
    samples = np.concatenate((tone(-100, seconds=1), tone(0, seconds=1), tone(-100, seconds=1)))

    # The needle overshoots by 1 to 1.5 %: 0.1 dB.
    assert vu.peak(samples) == pytest.approx(1, abs=0.3)
