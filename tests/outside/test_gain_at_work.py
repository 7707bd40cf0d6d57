"""What limiter, automatic gain, tape and hiss do to samples, against published curves."""

from math import exp

import numpy as np
import pytest

from exercises.signal.sound.automatic import Following
from exercises.signal.sound.hiss import SNR, hissing
from exercises.signal.sound.limiting import Limiting
from exercises.signal.sound.samples import BLOCK, LINE_UP, RATE
from exercises.signal.sound.saturation import MOST, saturated
from exercises.tape.gain_control import AUTOMATIC_GAIN, Limiter
from tests.waves import rms_level, strength, tone


@pytest.mark.parametrize(
    ("level", "leaves"), [(-30, -30), (-20, -20), (-12, -18), (-6, -16.5), (0, -15)]
)
def test_steady_tone_leaves_the_limiter_by_its_static_curve(level: float, leaves: float) -> None:
    """Hard knee at -20, ratio 4: Giannoulis, Massberg and Reiss, JAES 60(6) (2012)."""
    limiting = Limiting(Limiter(threshold=-200, ratio=4), peaks=0)

    settled = limiting.apply(tone(10 * level, seconds=1))[RATE // 2 :]

    assert rms_level(settled) / 10 == pytest.approx(leaves, abs=0.2)


@pytest.mark.parametrize("milliseconds", [100, 250, 500, 1000, 2000])
def test_gain_recovers_in_a_pause_by_its_time_constant(milliseconds: int) -> None:
    """G(1 - e^(-t/tau)): 63 % at the time constant (IEC 60268-8 measures such devices).

    The fall of the sound is seen within 30 ms; the gain lies between the two.
    """
    following = Following(AUTOMATIC_GAIN)
    following.apply(tone(0, seconds=1))

    softer = following.apply(tone(-400, seconds=(milliseconds + 8) / 1000))

    recovered = rms_level(softer[-16 * BLOCK :]) + 400

    def expected(time: float) -> float:
        return AUTOMATIC_GAIN.most * (1 - exp(-time / AUTOMATIC_GAIN.release))

    assert expected(milliseconds - 30) <= recovered <= expected(milliseconds) + 1


def test_maximum_output_level_has_3_percent_of_third_harmonic() -> None:
    """A tape's maximum output level is where a tone has 3 % of third harmonic (common
    practice; from memory, IEC 60094-5)."""
    held = saturated(tone(MOST, seconds=1))

    assert strength(held, 3000) / strength(held, 1000) == pytest.approx(0.03, rel=0.01)


def test_line_up_tone_is_nearly_pure() -> None:
    """From memory: the third harmonic falls with the square of the level, 24 dB at 12 dB less."""
    held = saturated(tone(0, seconds=1))

    pure = strength(held, 3000) / strength(held, 1000)

    assert 20 * np.log10(pure / 0.03) == pytest.approx(-24, abs=1)


@pytest.mark.parametrize(("copies", "lost"), [(1, 0), (2, 3.01), (3, 4.77), (4, 6.02), (5, 6.99)])
def test_equal_copies_cost_10_log_n(copies: int, lost: float) -> None:
    """Derived here: noise powers add, 3 dB for each doubling of the copies."""
    hiss = hissing(0, 8 * RATE, recordings=copies, seed=1)

    ratio = 20 * np.log10(LINE_UP / np.sqrt(2) / np.sqrt(np.mean(hiss.astype(float) ** 2)))

    assert ratio == pytest.approx(SNR - lost, abs=0.1)
