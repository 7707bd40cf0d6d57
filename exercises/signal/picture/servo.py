"""What a machine that is not locked yet reads: the heads slide across the tracks."""

import numpy as np

from exercises.signal.arrays import Plane
from exercises.signal.picture.envelope import seen_at

CROSSINGS = 2.2  # tracks of its own that a head crosses in a field when the pulses begin


def seen(settling: float, rows: int) -> Plane:
    """The signal by rows: bars of noise between the tracks, fewer and lower as it locks.

    A track of the other head's azimuth gives nothing, so that the pitch of the bars is two.
    """
    left = max(0.0, 1 - settling / 0.7)
    along = (np.arange(rows, dtype=np.float32) + 0.5) / rows
    across = left * (CROSSINGS * (along - 0.5) + 1.6 * settling)
    off = 100 * np.abs((across + 1) % 2 - 1)
    return seen_at(off.astype(np.float32))
