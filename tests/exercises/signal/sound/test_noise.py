import numpy as np
import pytest

from exercises.signal.sound.harbour import harbour
from exercises.signal.sound.hiss import SNR, hissing
from exercises.signal.sound.noise import band, hiss, room_tone, shaped
from exercises.signal.sound.samples import RATE, average_level
from tests.waves import rms_level


def test_noise_is_the_same_each_time() -> None:
    first, second = (shaped(5, RATE, band(100, 1000)) for _ in range(2))

    np.testing.assert_array_equal(first, second)


def test_noise_differs_by_seed() -> None:
    first, second = hiss(1).samples, hiss(2).samples

    assert abs(np.corrcoef(first, second)[0, 1]) < 0.02


def test_noise_loops_without_a_seam() -> None:
    noise = shaped(5, RATE, band(20, 100))

    steps = np.abs(np.diff(noise, append=noise[0]))

    assert steps[-1] < 4 * steps.mean()


@pytest.mark.parametrize(("recordings", "lost"), [(1, 0), (2, 30.1), (4, 60.2)])
def test_hiss_grows_with_each_recording(recordings: int, lost: float) -> None:
    level = rms_level(hissing(0, 8 * RATE, recordings=recordings, seed=1))

    assert level == pytest.approx(-10 * SNR + lost, abs=0.5)


def test_first_recording_brings_no_hiss_from_its_source() -> None:
    assert not hissing(0, RATE, recordings=0, seed=1).any()


def test_room_tone_averages_line_up() -> None:
    assert average_level(room_tone().samples) == pytest.approx(0, abs=0.1)


def test_harbour_stays_within_full_scale() -> None:
    assert 0.2 < np.abs(harbour().samples).max() < 1
