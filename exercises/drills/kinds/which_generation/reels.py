"""Tapes copied from tapes, each recording with a signal-to-noise of its own."""

from dataclasses import dataclass

from exercises.drills.setting.phrases import listed
from exercises.drills.setting.quay_street import Shot
from exercises.tape.noise import chain_snr

MASTER = "Edit master"
FESTIVAL, SALOON = "Festival copy", "Saloon copy"
WHOLE = (MASTER, FESTIVAL, SALOON)  # tapes that hold all of the film


@dataclass(frozen=True, slots=True)
class CopiedTape:
    """A tape, the signal-to-noise of the recording on it, in whole dB, and what it is a copy of."""

    name: str
    snr: int
    copied: "CopiedTape | None" = None

    @property
    def line(self) -> tuple["CopiedTape", ...]:
        """The tapes on the way from the camera to this one, both included."""
        return (*(self.copied.line if self.copied else ()), self)

    @property
    def generation(self) -> int:
        return len(self.line)

    @property
    def chain(self) -> tuple[int, ...]:
        return tuple(reel.snr for reel in self.line)

    @property
    def noise(self) -> float:
        """Signal-to-noise in dB through all recordings so far."""
        return chain_snr(self.chain)

    def told(self) -> str:
        """Where it comes from, in one line."""
        if self.copied is None:
            return f"camera original, recorded at {self.snr} dB"
        return f"copy of {self.copied.name}, recorded at {self.snr} dB"


@dataclass(frozen=True, slots=True)
class CopiedShot:
    """A shot on the last tape of the chain."""

    shot: Shot
    reel: CopiedTape

    def way(self) -> str:
        """The tapes that it went through, with the generation on each."""
        return " → ".join(
            f"{each.name} ({number})" for number, each in enumerate(self.reel.line, 1)
        )

    def sum(self) -> str:
        """How its noise adds up."""
        figures = listed([str(snr) for snr in self.reel.chain])
        return f"The noise of all recordings adds up: {figures} dB make {self.reel.noise:.1f} dB."
