import numpy as np
import pytest

from exercises.signal.sound.samples import RATE
from exercises.signal.sound.tones import line_up_tone
from exercises.signal.sound.wow import MOST, SWING, Unsteady, read_unsteadily

HUNTING = Unsteady(1000, 1000 + RATE)


def test_machine_leads_and_lags_inside_the_stretch_only() -> None:
    lead = HUNTING.lead(np.arange(0, 2 * RATE))

    assert not lead[:1001].any()
    assert not lead[1000 + RATE :].any()
    assert 0.7 * SWING < np.abs(lead).max() < SWING


def test_speed_swings_by_what_it_should() -> None:
    speed = np.diff(HUNTING.lead(np.arange(1000, 1000 + RATE)))

    assert np.abs(speed).max() == pytest.approx(MOST, rel=0.05)


def test_steady_stretch_is_read_as_it_is() -> None:
    positions = np.arange(5000, 6000)

    heard = read_unsteadily(line_up_tone(), 77, positions, [Unsteady(0, 4000)])

    np.testing.assert_array_equal(heard, line_up_tone().read(77, 1000))


def test_unsteady_tone_is_out_of_pitch_and_comes_back() -> None:
    positions = np.arange(1000, 1000 + 2 * RATE)

    heard = read_unsteadily(line_up_tone(), 0, positions, [HUNTING])

    steady = line_up_tone().read(0, 2 * RATE)
    assert np.abs(heard - steady)[:RATE].max() > 0.1
    np.testing.assert_allclose(heard[RATE:], steady[RATE:], atol=1e-6)
