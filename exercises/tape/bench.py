from dataclasses import dataclass

from exercises.tape.rate import Rate


@dataclass(frozen=True, slots=True)
class Bench:
    """What two machines need, in frames. The defaults are common practice, not a standard.

    lock       run-up over pulses in phase before a machine is locked (5 s)
    relock     how long a playing machine's picture rolls after the pulses jump (1 s)
    erase_gap  tape wiped past the end of an assemble, because the full-width erase
               head sits upstream of the recording heads (2 s; depends on the machine)
    """

    rate: Rate
    lock: int
    relock: int
    erase_gap: int

    @classmethod
    def default(cls, rate: Rate = Rate.R29_97) -> "Bench":
        second = rate.nominal
        return cls(rate, lock=5 * second, relock=second, erase_gap=2 * second)
