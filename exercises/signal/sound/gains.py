"""Gains that change while the sound runs, worked out a millisecond at a time."""

import numpy as np
from numpy.typing import NDArray

from exercises.signal.sound.samples import BLOCK, Samples


def blocks(samples: Samples) -> Samples:
    """The samples by milliseconds, the last filled up with silence."""
    return np.pad(samples, (0, -len(samples) % BLOCK)).reshape(-1, BLOCK)


def gained_along(samples: Samples, gains: NDArray[np.float64]) -> Samples:
    """The samples under gains in tenths of a dB: one for where they begin, and one for
    each millisecond's end. Between them the gain runs in a line."""
    along = np.arange(1, len(samples) + 1) / BLOCK
    tenths = np.interp(along, np.arange(len(gains)), gains)
    return samples * np.power(10, tenths / 200).astype(np.float32)
