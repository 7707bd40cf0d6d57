"""How bright and how loud: levels, and what gains make of them.

Picture levels are in IRE over blanking (100 is white at its right level: SMPTE 170M),
sound levels in tenths of a dB over line-up tone, which reads 0 VU (IEC 60268-17); gains
are in tenths of a dB.
"""

from dataclasses import dataclass
from math import log10

WHITE = 100  # IRE
REACH = 60  # 0.1 dB; how far automatic picture level goes, either way (common practice)


@dataclass(frozen=True, slots=True)
class Levels:
    """What a recording carries.

    white  IRE of its white
    sound  of speech, as a VU meter reads it, in 0.1 dB over line-up
    room   of the room tone that is left in a pause, likewise
    """

    white: int = WHITE
    sound: int = 0
    room: int = -400


LINED_UP = Levels()


def gained(white: float, gain: float) -> float:
    """IRE after a gain in tenths of a dB. 6.02 dB is twice the voltage.

    >>> round(gained(50, 60.2))
    100
    """
    return float(white * 10 ** (gain / 200))


def looped(ends: int) -> float:
    """What so many ends of 75 Ω make of a level, in tenths of a dB against one.

    A source of 75 Ω feeds the line; each box whose end is on adds 75 Ω beside the others.

    >>> round(looped(0), 1), round(looped(2), 1)
    (60.2, -35.2)
    """
    return decibels(2 / (1 + ends))


def decibels(ratio: float) -> float:
    """A ratio of two voltages as tenths of a dB.

    >>> round(decibels(2), 1)
    60.2
    """
    return 200 * log10(ratio)


def automatic_white(white: float) -> float:
    """IRE that automatic picture level makes of a white: what it should be, within reach.

    Of the kind that goes by the brightest part; another goes by sync, and leaves a white alone
    that its signal carries so (both are common practice).

    >>> round(automatic_white(60)), round(automatic_white(30))
    (100, 60)
    """
    return min(max(WHITE, gained(white, -REACH)), gained(white, REACH))
