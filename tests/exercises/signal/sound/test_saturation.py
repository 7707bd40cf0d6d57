import numpy as np
import pytest

from exercises.signal.sound.saturation import CEILING, MOST, saturated
from tests.waves import rms_level, tone


def test_line_up_tone_stays_at_its_level_through_many_copies() -> None:
    copy = tone(0, seconds=0.1)
    for _ in range(10):
        copy = saturated(copy)

    assert rms_level(copy) == pytest.approx(0, abs=0.3)


def test_soft_sound_stays_as_it_is() -> None:
    assert rms_level(saturated(tone(-200, seconds=0.1))) == pytest.approx(-200, abs=1.2)


def test_loud_sound_is_held_under_the_ceiling() -> None:
    assert np.abs(saturated(tone(400, seconds=0.1))).max() <= CEILING


@pytest.mark.parametrize(("over", "lost"), [(-90, 0), (0, 7), (60, 25)])
def test_louder_loses_more(over: int, lost: int) -> None:
    level = MOST + over

    assert level - rms_level(saturated(tone(level, seconds=0.1))) == pytest.approx(lost, abs=1.5)
