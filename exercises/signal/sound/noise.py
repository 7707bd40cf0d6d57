"""Noises made by drawing a spectrum: they loop without a seam. Seeded through PCG64."""

from collections.abc import Callable
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from exercises.signal.sound.samples import LINE_UP, RATE, Samples, average_level
from exercises.signal.sound.soundtrack import Loop
from exercises.tape.levels import gained

Response = Callable[[NDArray[np.float64]], NDArray[np.float64]]

HISS_ROOT = LINE_UP / np.sqrt(2)  # rms of line-up tone: what signal-to-noise is measured from


def shaped(seed: int, samples: int, response: Response) -> NDArray[np.float64]:
    """Gaussian noise of rms 1; ``response`` gives its amplitude at frequencies in Hz."""
    frequencies = np.fft.rfftfreq(samples, 1 / RATE).astype(np.float64)
    drawn = np.random.Generator(np.random.PCG64(seed)).standard_normal((2, len(frequencies)))
    spectrum = (drawn[0] + 1j * drawn[1]) * response(frequencies)
    spectrum[0] = 0
    noise = np.fft.irfft(spectrum, samples)
    return np.asarray(noise / np.sqrt(np.mean(noise**2)))


def band(low: float, high: float) -> Response:
    """One pole at either end of a band."""
    return lambda hertz: (hertz / np.hypot(hertz, low)) / np.hypot(1, hertz / high)


@lru_cache
def hiss(seed: int) -> Loop:
    """Tape noise: even, but for the lows; its rms is that of line-up tone.

    Recordings hiss independently of each other: give each a seed of its own.
    """
    return Loop((shaped(seed, 8 * RATE, band(400, RATE)) * HISS_ROOT).astype(np.float32))


@lru_cache
def room_tone(seed: int = 1) -> Loop:
    """A quiet room: mostly low. It averages line-up level."""
    noise: Samples = shaped(seed, 10 * RATE, band(60, 250)).astype(np.float32)
    return Loop(noise * np.float32(gained(1, -average_level(noise))))
