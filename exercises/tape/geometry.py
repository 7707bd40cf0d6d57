"""Tape and tracks: what tracking does to the heads' signal, and how fast tape is used."""

from enum import Enum
from fractions import Fraction
from math import log10

from exercises.tape.rate import Rate

LOST = 400  # 0.1 dB; a signal this far down is gone


class TapeSpeed(Enum):
    """Tape speeds in hundredths of a mm a second, by rate: the named standards'."""

    IEC_60712 = {Rate.R29_97: 9530, Rate.R25: 9530}  # 19 mm cassette
    IEC_60774_1 = {Rate.R29_97: 3335, Rate.R25: 2339}  # 12.65 mm cassette

    def used(self, frames: int, rate: Rate) -> Fraction:
        """Millimetres of tape in so many frames, exactly.

        >>> round(TapeSpeed.IEC_60712.used(1500, Rate.R25))
        5718
        """
        return Fraction(self.value[rate] * frames, 100) / rate.fraction


def envelope_loss(tracking: float) -> float:
    """How far the heads' signal is down, in tenths of a dB, at a tracking error in percent.

    A head as wide as its track sees as much of it as it covers, so the signal falls in a
    straight line on either side of the best setting and is half at half a track.

    >>> round(envelope_loss(-50), 1)
    60.2
    """
    seen = 1 - abs(tracking) / 100
    return min(float(LOST), -200 * log10(seen)) if seen > 0 else float(LOST)
