import numpy as np
import pytest

from exercises.signal.sound.recorder import SoundChannel, recorded
from exercises.signal.sound.samples import RATE
from exercises.tape.bench import Bench
from exercises.tape.levels import LINED_UP, Levels
from exercises.tape.machines import SoundLevel, SoundMode
from tests.waves import rms_level, strength, tone

BENCH = Bench.default()


def harmonic(setting: SoundLevel) -> float:
    """The share of third harmonic in line-up tone so recorded."""
    held = recorded(tone(0, seconds=3), setting, BENCH, LINED_UP)[RATE : 2 * RATE]
    return strength(held, 3000) / strength(held, 1000)


def test_too_much_level_by_hand_is_distorted() -> None:
    levels = [harmonic(SoundLevel(gain=gain)) for gain in (0, 60, 120, 180)]

    assert levels == sorted(levels)
    assert levels[0] < 0.005
    assert levels[3] > 0.08


def test_automatic_gain_keeps_a_loud_tone_undistorted() -> None:
    assert harmonic(SoundLevel(SoundMode.AUTOMATIC, gain=180)) < 0.005


def test_limiter_keeps_peaks_of_speech_where_the_tape_can_hold_them() -> None:
    assert harmonic(SoundLevel(SoundMode.LIMITER, gain=180)) < 0.03


@pytest.mark.parametrize("level", [-100, 100])
def test_automatic_gain_begins_at_rest_as_after_speech(level: int) -> None:
    channel = SoundChannel(SoundLevel(SoundMode.AUTOMATIC), BENCH, Levels(sound=level))

    held = channel.record(tone(-200, seconds=0.01))

    assert rms_level(held) == pytest.approx(-200 - level, abs=5)


def test_recording_hisses() -> None:
    quiet = recorded(np.zeros(RATE, np.float32), SoundLevel(), BENCH, LINED_UP)

    assert -490 < rms_level(quiet) < -470
