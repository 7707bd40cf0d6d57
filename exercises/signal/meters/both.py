"""A VU meter and a peak meter that watch the same sound."""

import numpy as np

from exercises.signal.meters import peak, vu
from exercises.signal.sound.samples import RATE, Samples


def highest(samples: Samples) -> tuple[float, float]:
    """The highest that either reads, VU meter first, in tenths of a dB over line-up.

    A second of silence follows, in which the slower needle still rises.
    """
    return vu.peak(np.pad(samples, (0, RATE))), peak.highest(samples)
