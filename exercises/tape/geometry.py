"""Tape and tracks: what tracking does to the heads' signal."""

from math import log10

LOST = 400  # 0.1 dB; a signal this far down is gone


def envelope_loss(tracking: float) -> float:
    """How far the heads' signal is down, in tenths of a dB, at a tracking error in percent.

    A head as wide as its track sees as much of it as it covers, so the signal falls in a
    straight line on either side of the best setting and is half at half a track.

    >>> round(envelope_loss(-50), 1)
    60.2
    """
    seen = 1 - abs(tracking) / 100
    return min(float(LOST), -200 * log10(seen)) if seen > 0 else float(LOST)
