from dataclasses import dataclass

from exercises.tape.gain_control import AUTOMATIC_GAIN, LIMITER, AutomaticGain, Limiter
from exercises.tape.limits import LIMITS, Limits
from exercises.tape.rate import Rate


@dataclass(frozen=True, slots=True)
class Bench:
    """What two machines need, in frames, and how well they record.

    lock       run-up over pulses in phase before a machine is locked (5 s)
    relock     how long a playing machine's picture rolls after the pulses jump (1 s)
    erase_gap  tape wiped past the end of an assemble, because the full-width erase
               head sits upstream of the recording heads (2 s; depends on the machine)
    snr        signal-to-noise of one recording, in 0.1 dB (46 dB; depends on the machine)
    drop_frame whether the time code is drop-frame; only at 29.97

    The defaults are common practice, not a standard.
    """

    rate: Rate
    lock: int
    relock: int
    erase_gap: int
    snr: int = 460
    limiter: Limiter = LIMITER
    automatic_gain: AutomaticGain = AUTOMATIC_GAIN
    limits: Limits = LIMITS
    drop_frame: bool = False

    @classmethod
    def default(cls, rate: Rate = Rate.R29_97) -> "Bench":
        second = rate.nominal
        return cls(rate, lock=5 * second, relock=second, erase_gap=2 * second)
