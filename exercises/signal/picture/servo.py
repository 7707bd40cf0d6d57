"""What a machine reads that is not locked: the heads slide across the tracks."""

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


def drifting(adrift: float, rows: int) -> Plane:
    """The signal by rows where no pulses ever bring it to lock: the bars go on and on.

    As `seen`, with nothing left to be won; after a whole round they lie where they lay.
    """
    along = (np.arange(rows, dtype=np.float32) + 0.5) / rows
    off = 100 * np.abs((across(adrift, along) + 1) % 2 - 1)
    return seen_at(off.astype(np.float32))


def across(adrift: float, along: Plane) -> Plane:
    """Tracks that a head is off its own by, along a field, 0 to 1, where there are no pulses."""
    tracks: Plane = np.float32(CROSSINGS) * (along - np.float32(0.5)) - np.float32(2 * adrift)
    return tracks
