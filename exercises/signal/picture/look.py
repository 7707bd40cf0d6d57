"""What is to be seen of how a picture was recorded."""

from dataclasses import dataclass
from math import inf

from exercises.signal.lines import Lines


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """What heads, levels, copies and servos do to a picture; without words, to none.

    lines      the line system
    source     IRE of the white that the source carries
    gain       picture level, in dB
    pedestal   IRE that black stands over its right level
    snr        signal-to-noise of the whole chain of recordings, in dB
    copies     generation: how many recordings the picture went through; 0: not on tape
    tracking   how far the heads are off the middle of the track, in percent of its width
    dirt       how much of the heads’ signal is lost to dirt between them and the tape, in dB
    skew       time step where the heads change over, in µs; positive is late, to the right
    hold       how many lines a monitor's line hold takes to follow a step; None: it doesn't
    dropouts   how many there are in a frame, on average
    settling   how far the machine has got in locking, 0 (pulses begin) to 1; None: locked
    adrift     how far the picture has slid through the screen for want of pulses, 0 to 1;
               None: there are pulses
    blank      nothing is recorded
    """

    lines: Lines = Lines.L525
    source: float = 100.0
    gain: float = 0.0
    pedestal: float = 0.0
    snr: float = inf
    copies: int = 0
    tracking: float = 0.0
    dirt: float = 0.0
    skew: float = 0.0
    hold: float | None = 30.0
    dropouts: float = 0.0
    settling: float | None = None
    adrift: float | None = None
    blank: bool = False


CLEAN = Look()
