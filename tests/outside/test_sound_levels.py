"""Levels, limiter and automatic gain, against standards, papers and another library."""

from math import exp, log

import numpy as np
import pytest
from scipy.signal import lfilter

from exercises.tape import AutomaticGain, Bench, Limiter, Limits, Rate
from exercises.tape.faults.meter import sound_of
from exercises.tape.history import History
from exercises.tape.levels import Levels, decibels, gained
from exercises.tape.machines import Machines, SoundLevel, SoundMode

BENCH = Bench.default(Rate.R25)


@pytest.mark.parametrize(
    ("level", "volts"),
    [
        # 0 dBu is 0.7746 V, 0 VU is +4 dBu, 1.2277 V rms (IEC 60268-17, ANSI C16.5).
        (-40, 0.7746),
        (0, 1.2277),
        # The scale ends at +3 VU: 1.2277 V times 10 ** (3 / 20).
        (30, 1.7342),
    ],
)
def test_level_over_line_up_is_so_many_volts(level: int, volts: float) -> None:
    """IEC 60268-17, ANSI C16.5: 0 VU is +4 dBu, and 0 dBu 0.7746 V."""
    assert gained(1.2277, level) == pytest.approx(volts, abs=0.0005)
    assert decibels(volts / 1.2277) == pytest.approx(level, abs=0.01)


def test_distorted_begins_at_the_end_of_the_vu_scale() -> None:
    """IEC 60268-17: the scale runs from -20 to +3 VU."""
    assert Limits().distorted_sound == 30


@pytest.mark.parametrize(
    ("volts", "gain", "after"),
    # Twice the voltage is 6.02 dB, ten times 20 dB: from the definition of the decibel.
    [(0.35, 60.2, 0.7), (0.07, 200, 0.7), (0.7, -60.2, 0.35), (0.714, 0, 0.714)],
)
def test_gain_multiplies_volts(volts: float, gain: float, after: float) -> None:
    """Derived here from the definition of the decibel: twice the voltage is 6.02 dB, ten times
    20.
    """
    assert gained(volts, gain) == pytest.approx(after, abs=0.0005)


def test_white_in_ire_and_in_volts_take_the_same_gain() -> None:
    """SMPTE 170M: 100 IRE are 714.3 mV, and the white bar of 75 % bars 76.9 IRE, 549.1 mV."""
    assert gained(76.9, 22.8) == pytest.approx(100, abs=0.05)
    assert gained(549.1, 22.8) == pytest.approx(714.3, abs=0.5)


@pytest.mark.parametrize(
    ("level", "out"),
    # Hard knee, threshold -20 dB, ratio 4: T + (x - T) / R above T (Giannoulis, Massberg and
    # Reiss, JAES 60(6), 2012).
    [(-300, -300), (-200, -200), (-120, -180), (-60, -165), (0, -150)],
)
def test_static_curve_of_the_limiter(level: float, out: float) -> None:
    """Hard knee, T + (x - T) / R above T: Giannoulis, Massberg and Reiss, JAES 60(6) (2012)."""
    assert Limiter(threshold=-200, ratio=4).out(level) == pytest.approx(out)


def test_limiter_takes_peaks_only() -> None:
    """Common practice: what lies below the threshold goes through it as it is."""
    limiter = Limiter()

    assert [limiter.out(level) for level in (-400, -100, -1, 0)] == [-400, -100, -1, 0]
    assert 0 < limiter.out(120) < 30


@pytest.mark.parametrize(
    ("milliseconds", "share"),
    # A time constant is the time to 63 % (1 - 1/e) of the change; 10 to 90 % takes 2.197 of
    # them. G (1 - e^(-t / tau)) of the gain G is recovered in a pause of t.
    [(0, 0), (500, 0.632), (1000, 0.865), (1500, 0.950), (500 * 0.10536, 0.1), (1151.3, 0.9)],
)
def test_gain_recovered_in_a_pause(milliseconds: float, share: float) -> None:
    """Derived here from the time constant of one pole: G (1 - e^(-t / tau)) is recovered in a
    pause of t; 63 % at tau, and 10 to 90 % take 2.197 of them.
    """
    gains = AutomaticGain(target=0, most=200, release=500)

    recovered = gains.after(milliseconds, gain=0, level=-400)

    assert recovered == pytest.approx(200 * share, abs=0.2)


@pytest.mark.parametrize(("change", "within"), [(150, 20), (200, 40), (120, 30)])
def test_time_to_come_near_a_new_gain(change: int, within: int) -> None:
    """Derived here: one pole in dB is within w of a change G after tau ln(G / w)."""
    gains = AutomaticGain(most=change, release=400)

    at = 400 * log(change / within)

    assert gains.settled(-900) - gains.after(at, gain=0, level=-900) == pytest.approx(within)


def test_attack_and_release_are_a_one_pole_filter_in_decibels() -> None:
    """scipy.signal.lfilter: y[n] = (1 - a) x[n] + a y[n - 1], a = e^(-1 ms / tau), fed the gain
    aimed at.
    """
    gains = AutomaticGain(most=200, attack=30, release=500)
    pause, word = np.full(800, 200.0), np.zeros(100)
    rising, falling = exp(-1 / 500), exp(-1 / 30)
    up = lfilter([1 - rising], [1, -rising], pause)
    down, _ = lfilter([1 - falling], [1, -falling], word, zi=[falling * up[-1]])

    gain, ours = 0.0, []
    for level in (*(-400 for _ in pause), *(0 for _ in word)):
        gain = gains.after(1, gain=gain, level=level)
        ours.append(gain)

    assert ours == pytest.approx([*up, *down], abs=1e-6)
    assert gains.after(800, gain=0, level=-400) == pytest.approx(up[-1])


def test_automatic_gain_raises_the_noise_between_words() -> None:
    """Common practice: it evens out speech and brings up the room in the pauses."""
    gains = BENCH.automatic_gain

    room = -400 + gains.after(2000, gain=gains.settled(0), level=-400)

    assert room > -250


def test_automatic_gain_brings_soft_speech_to_line_up() -> None:
    """Common practice: level riding by machine; here within its 20 dB either way."""
    made = History(machines=Machines(sound=SoundLevel(SoundMode.AUTOMATIC)))

    assert [sound_of(made, Levels(sound=level), BENCH) for level in (-150, 0, 100)] == [0, 0, 0]
