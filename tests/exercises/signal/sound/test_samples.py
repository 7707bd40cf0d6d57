from math import inf

import numpy as np
import pytest

from exercises.signal.sound.samples import average_level, milliseconds, sample_at
from exercises.tape.rate import Rate
from tests.waves import tone


@pytest.mark.parametrize(
    ("rate", "frame", "sample"),
    [
        (Rate.R25, 1, 640),
        (Rate.R25, 250, 160_000),
        (Rate.R29_97, 1, 533),
        (Rate.R29_97, 30_000, 16_016_000),
    ],
)
def test_frame_begins_at_its_sample(rate: Rate, frame: int, sample: int) -> None:
    assert sample_at(frame, rate) == sample


@pytest.mark.parametrize(("hertz", "within"), [(440, 0.2), (997, 0.2), (1000, 0.2), (3150, 3)])
def test_average_level_of_a_tone_is_its_own(hertz: float, within: float) -> None:
    assert average_level(tone(-70, seconds=2, hertz=hertz)) == pytest.approx(-70, abs=within)


def test_average_level_of_silence_is_none() -> None:
    assert average_level(np.zeros(10, np.float32)) == -inf


def test_average_level_of_nothing_is_none() -> None:
    assert average_level(np.empty(0, np.float32)) == -inf


def test_samples_in_milliseconds() -> None:
    assert milliseconds(16_040) == 1002
