"""Steady tones: line-up, and the hum of the mains."""

from collections.abc import Iterable
from functools import lru_cache

import numpy as np

from exercises.signal.sound.samples import LINE_UP, RATE, Samples, average_level
from exercises.signal.sound.soundtrack import Loop
from exercises.tape.levels import gained

# The mains' harmonics and how strong they are, as a badly earthed cable brings them in
# (common practice: a rectified supply adds the even ones).
HUM = ((1, 1.0), (2, 0.6), (3, 0.35), (4, 0.2), (5, 0.15), (6, 0.1))


@lru_cache
def line_up_tone() -> Loop:
    """1 kHz at line-up level: it reads 0 VU."""
    return Loop(LINE_UP * partials([(1000, 1)]))


@lru_cache
def hum(mains: int) -> Loop:
    """Hum of a mains of 50 or 60 Hz, averaging line-up level."""
    wave = partials((order * mains, strength) for order, strength in HUM)
    return Loop(wave * np.float32(gained(1, -average_level(wave))))


def partials(parts: Iterable[tuple[int, float]]) -> Samples:
    """A second of sines, each a frequency in whole Hz and its amplitude."""
    turns = 2 * np.pi * np.arange(RATE) / RATE
    wave = sum((strength * np.sin(hertz * turns) for hertz, strength in parts), np.zeros(RATE))
    return wave.astype(np.float32)
