"""Samples, their rate, and what line-up level is among them."""

from math import inf, pi

import numpy as np
from numpy.typing import NDArray

from exercises.tape.levels import decibels, gained
from exercises.tape.rate import Rate

Samples = NDArray[np.float32]

RATE = 16_000  # samples a second
BLOCK = RATE // 1000  # a millisecond: the step in which a recorder's gain is worked out

# Amplitude of line-up tone, a sine, at full scale 1: 18 dB below a full-scale sine (EBU R 68).
LINE_UP = gained(1, -180)

# How far the peaks of speech stand over the level that a VU meter reads of it, in tenths of a
# dB: the permitted maximum level over alignment level (EBU R 68, ITU-R BS.645).
SPEECH_PEAKS = 90

# What a full-wave average is multiplied by to show the amplitude of a sine.
SINE = pi / 2


def sample_at(frame: int, rate: Rate) -> int:
    """The sample at which a frame begins.

    >>> sample_at(30, Rate.R29_97), sample_at(25, Rate.R25)
    (16016, 16000)
    """
    return frame * RATE * rate.fraction.denominator // rate.fraction.numerator


def milliseconds(samples: int) -> int:
    """A number of samples in whole ms."""
    return round(1000 * samples / RATE)


def rectified(samples: Samples) -> NDArray[np.float64]:
    """What the wave, made positive, is on average since the sample before.

    Simpson's rule, with the wave's middle between two samples from a cubic: the bare
    samples of line-up tone, sixteen to a cycle, would come out 0.1 dB low.
    """
    before, start, end, after = (
        np.pad(samples.astype(np.float64), (2, 1))[at : at + len(samples)] for at in range(4)
    )
    middle = (9 * (start + end) - before - after) / 16
    return np.asarray((np.abs(start) + 4 * np.abs(middle) + np.abs(end)) / 6)


def average_level(samples: Samples) -> float:
    """The steady level in tenths of a dB over line-up, by full-wave average, sine-calibrated."""
    average = float(rectified(samples).mean()) if len(samples) else 0
    return decibels(SINE * average / LINE_UP) if average else -inf
