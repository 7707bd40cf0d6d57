"""A phrase as it was spoken, brought to the rate of our samples, and where its words lie."""

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from exercises.signal.sound.samples import BLOCK, RATE
from exercises.signal.speech.synthesis import Spoken

AUDIBLE = 10 ** (-38 / 20)  # of the phrase's loudest 5 ms: what is softer is not heard of it
WINDOW = 5 * BLOCK
RAMP = 3 * BLOCK  # at either end, against a click


@dataclass(frozen=True, slots=True)
class Phrase:
    """Samples, and the words' ``(start, end)`` among them."""

    samples: NDArray[np.float64]
    words: tuple[tuple[int, int], ...]


def phrase(spoken: Spoken) -> Phrase:
    """The phrase without the silence around it, each word without the silence beside it."""
    wave = resampled(spoken.samples.astype(np.float64) / 2**15, spoken.rate)
    heard = audible(wave)
    first, last = int(np.argmax(heard)), len(heard) - int(np.argmax(heard[::-1]))
    starts = [each * RATE // spoken.rate for each in spoken.words]
    words = [_within(heard, start, min(end, last)) for start, end in pairwise([*starts, len(wave)])]
    return Phrase(
        _ramped(wave[first:last]), tuple((start - first, end - first) for start, end in words)
    )


def resampled(wave: NDArray[np.float64], rate: int) -> NDArray[np.float64]:
    """By the spectrum: what the new rate can't hold is left out."""
    count = len(wave) * RATE // rate
    spectrum = np.fft.rfft(wave)[: count // 2 + 1]
    return np.asarray(np.fft.irfft(spectrum, count) * count / len(wave))


def audible(wave: NDArray[np.float64]) -> NDArray[np.bool_]:
    """Whether each sample is in the midst of something loud enough to be heard."""
    power = np.convolve(wave**2, np.ones(WINDOW) / WINDOW, mode="same")
    return np.asarray(power > power.max() * AUDIBLE**2)


def _within(heard: NDArray[np.bool_], start: int, end: int) -> tuple[int, int]:
    inside = np.flatnonzero(heard[start:end])
    return start + int(inside[0]), start + int(inside[-1]) + 1


def _ramped(wave: NDArray[np.float64]) -> NDArray[np.float64]:
    wave = wave.copy()
    rise = np.linspace(0, 1, RAMP)
    wave[:RAMP] *= rise
    wave[-RAMP:] *= rise[::-1]
    return wave
