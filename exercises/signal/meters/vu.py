"""The VU meter of IEC 60268-17.

It shows the full-wave average, calibrated with a sine. Its needle is a mass on a damped
spring: 99 % of a step at 300 ms, and 1 to 1.5 % beyond it at most. Damping and frequency
are those of a second-order system with 1.25 % of overshoot.
"""

from math import inf, sqrt

import numpy as np
from numpy.typing import NDArray

from exercises.signal.sound.recursion import one_pole
from exercises.signal.sound.samples import LINE_UP, RATE, SINE, Samples, rectified
from exercises.tape.levels import decibels

DAMPING = 0.8127
FREQUENCY = 13.512  # rad/s, undamped

Deflections = NDArray[np.float64]


def deflections(samples: Samples) -> Deflections:
    """Where the needle is at each sample, begun at rest: 1 is 0 VU, line-up tone."""
    across = FREQUENCY * sqrt(1 - DAMPING**2)
    corner = complex(-FREQUENCY * DAMPING, across)
    pole = np.exp(corner / RATE)
    swing, _ = one_pole(rectified(samples) * (SINE / LINE_UP), pole)
    share = (pole - 1) / corner * FREQUENCY**2 / (1j * across)
    return np.real(share * swing)


def readings(samples: Samples, *, per_second: int = 25) -> list[float]:
    """What the needle reads, so often a second, in tenths of a dB; -inf when at rest."""
    moments = np.arange(1, len(samples) * per_second // RATE + 1) * RATE // per_second - 1
    return [reading(each) for each in deflections(samples)[moments].tolist()]


def reading(deflection: float) -> float:
    """Tenths of a dB over 0 VU at a deflection."""
    return decibels(deflection) if deflection > 0 else -inf


def peak(samples: Samples) -> float:
    """The highest that the needle reads, in tenths of a dB: a level as it is spoken of."""
    return reading(float(deflections(samples).max(initial=0)))
