"""Test tones, and how they are measured."""

import numpy as np

from exercises.signal.sound.samples import LINE_UP, RATE, Samples
from exercises.tape.levels import gained


def tone(level: float, *, seconds: float, hertz: float = 1000) -> Samples:
    """A sine at a level in tenths of a dB over line-up, begun at 0."""
    turns = 2 * np.pi * hertz * np.arange(round(seconds * RATE)) / RATE
    return (gained(LINE_UP, level) * np.sin(turns)).astype(np.float32)


def rms_level(samples: Samples) -> float:
    """Tenths of a dB over a sine at line-up, by root mean square."""
    power = np.square(samples, dtype=np.float64).mean()
    return float(100 * np.log10(2 * power / LINE_UP**2))


def strength(samples: Samples, hertz: float) -> float:
    """Amplitude of one frequency; there must be whole turns of it."""
    turns = 2j * np.pi * hertz * np.arange(len(samples)) / RATE
    return float(2 * np.abs(np.mean(samples * np.exp(-turns))))
