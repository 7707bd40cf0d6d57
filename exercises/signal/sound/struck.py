"""Iron that is struck: the pawl of the winch."""

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from exercises.signal.meters.vu import peak
from exercises.signal.sound.samples import LINE_UP, RATE, SPEECH_PEAKS, Samples
from exercises.tape.levels import gained

# Partials: Hz, strength, and how long they take to fall to 37 %, in s. This course's own choice.
PAWL = ((410, 0.7, 0.05), (1130, 1.0, 0.035), (2270, 0.8, 0.02), (3910, 0.5, 0.012))


@lru_cache
def winch() -> Samples:
    """Six clicks of the pawl as the winch turns."""
    click = _struck(PAWL, 0.25)
    turning = np.zeros(2 * RATE)
    for each in range(6):
        start = int(each * 0.31 * RATE)
        turning[start : start + len(click)] += click * (0.8 + 0.2 * (each % 2))
    return _levelled(turning)


def _struck(
    partials: tuple[tuple[float, float, float], ...], seconds: float
) -> NDArray[np.float64]:
    time = np.arange(int(seconds * RATE)) / RATE
    rings = (
        strength * np.exp(-time / fall) * np.sin(2 * np.pi * hertz * time)
        for hertz, strength, fall in partials
    )
    return np.asarray(np.sum(list(rings), axis=0) * np.minimum(1, (seconds - time) / 0.05))


def _levelled(wave: NDArray[np.float64]) -> Samples:
    """As loud as lined-up speech by a VU meter, or by its peaks, whichever comes first."""
    samples = wave.astype(np.float32)
    most = gained(LINE_UP, SPEECH_PEAKS) / float(np.abs(samples).max())
    return samples * np.float32(min(most, gained(1, -peak(samples))))
