"""A breath taken in: noise through the throat, that swells and stops."""

import numpy as np
from numpy.typing import NDArray

from exercises.signal.sound.noise import shaped
from exercises.signal.sound.samples import Samples, average_level
from exercises.tape.levels import gained

# Where throat and mouth ring: Hz, width in Hz, strength. This course's own choice.
RINGS = ((950, 350, 1.0), (1900, 500, 0.8), (3100, 800, 0.5))
LEVEL = -200  # 0.1 dB over line-up, on average


def breath(seed: int, samples: int) -> Samples:
    through = np.arange(samples) / samples
    swell = np.sin(np.pi * through**1.4) ** 1.5
    air = (shaped(seed, samples, _throat) * swell).astype(np.float32)
    return air * np.float32(gained(1, LEVEL - average_level(air)))


def _throat(hertz: NDArray[np.float64]) -> NDArray[np.float64]:
    rings = [strength / np.hypot(1, (hertz - at) / width) for at, width, strength in RINGS]
    return np.asarray(np.sum(rings, axis=0) * hertz / np.hypot(hertz, 300))
