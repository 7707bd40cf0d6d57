"""The two modes of recording. Ranges are half-open: ``out`` is the first frame left out."""

from dataclasses import dataclass, field

from exercises.tape.machines import WELL_ADJUSTED, Machines
from exercises.tape.source import Source


@dataclass(frozen=True, slots=True)
class Edit:
    """``[in_, out)`` of a source tape, laid on the master from frame ``at`` on."""

    source: Source
    in_: int
    out: int
    at: int
    machines: Machines = field(default=WELL_ADJUSTED, kw_only=True)

    @property
    def end(self) -> int:
        """The first frame of the master beyond the recording."""
        return self.at + self.out - self.in_


@dataclass(frozen=True, slots=True)
class Assemble(Edit):
    """Picture, sound and control; wipes the tape for a stretch past its end."""


@dataclass(frozen=True, slots=True)
class Insert(Edit):
    """One track, or picture and sound together, over pulses already there; wipes nothing."""

    picture: bool
    sound: bool
