"""A peak meter, type II of IEC 60268-10 (EBU Tech 3205): quick to rise, slow to fall.

It rises by one pole towards what the wave, made positive, comes to, and falls by an even number of
decibels a second. A burst of 10 ms then reads about 2 dB low, and 24 dB take 2.8 s to fall.
"""

from math import exp

import numpy as np

from exercises.signal.sound.samples import LINE_UP, RATE, Samples
from exercises.tape.levels import decibels, gained

RISE = 2.3  # ms, of the pole
FALL = 240 / 2.8  # 0.1 dB in a second

# How far line-up tone lies under the highest level that is permitted, in tenths of a dB (EBU R 68).
HEADROOM = 90


def highest(samples: Samples, *, rate: int = RATE) -> float:
    """The highest that it reads, in tenths of a dB over line-up tone."""
    rise, fall = 1 - exp(-1000 / (rate * RISE)), gained(1, -FALL / rate)
    reading = most = 0.0
    for level in (np.abs(samples) / LINE_UP).tolist():
        reading = reading + rise * (level - reading) if level > reading else reading * fall
        most = max(most, reading)
    return decibels(max(most, 1e-6))
