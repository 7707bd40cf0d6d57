"""What is known of a stretch of tape beyond its frames: what it carried, and how it was made."""

from dataclasses import dataclass

from exercises.tape.levels import LINED_UP, Levels
from exercises.tape.machines import WELL_ADJUSTED, Machines
from exercises.tape.marks import UNMARKED, Marks


@dataclass(frozen=True, slots=True)
class Carried:
    """What a recording carries.

    levels  None: there is nothing to measure, as in black or a leader
    chain   signal-to-noise, in 0.1 dB, of those recordings on the way from the camera
            that the bench's usual figure is not true of
    marks   in frames of the source
    """

    levels: Levels | None = LINED_UP
    chain: tuple[int, ...] = ()
    marks: Marks = UNMARKED


LINED_UP_TAKE = Carried()


@dataclass(frozen=True, slots=True)
class History:
    """How a stretch of tape came about.

    carried   what the source carried there
    machines  how they stood when it was recorded
    since     source frame at which the recording began; None where nothing wanders
              while the tape runs, so that it can't matter
    together  start of the take whose picture and sound belong together; None where
              they don't
    """

    carried: Carried = LINED_UP_TAKE
    machines: Machines = WELL_ADJUSTED
    since: int | None = None
    together: int | None = None

    @property
    def chain(self) -> tuple[int, ...]:
        """Signal-to-noise of the recordings that the bench's figure is not true of."""
        snr = self.machines.recorder.snr
        return self.carried.chain if snr is None else (*self.carried.chain, snr)


PLAINLY = History()
