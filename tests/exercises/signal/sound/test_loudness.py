import numpy as np
import pytest

from exercises.signal.sound.loudness import loudness
from exercises.signal.sound.tones import line_up_tone
from exercises.signal.speech.reel import reel
from exercises.tape.rate import Rate


@pytest.mark.parametrize("rate", list(Rate))
def test_loudness_of_line_up_tone_is_1(rate: Rate) -> None:
    found = loudness(line_up_tone(), start=11, frames=40, rate=rate)

    np.testing.assert_allclose(found, np.ones(40), rtol=0.01)


def test_loudness_follows_the_words() -> None:
    said = reel("keeper-5", begin=1000)

    found = loudness(said, start=0, frames=100, rate=Rate.R25)

    spoken = np.zeros(100, bool)
    for start, end in said.marks(Rate.R25).words:
        spoken[start:end] = True
    assert found[~spoken].mean() < 0.01
    assert found[spoken].mean() > 0.5
