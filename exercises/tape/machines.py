"""How a recording is made: the player's adjustment, the recorder's, and the levels.

The defaults are a well-adjusted bench.
"""

from dataclasses import dataclass
from enum import StrEnum


@dataclass(frozen=True, slots=True)
class Drift:
    """How a player's adjustment changes while the tape runs.

    seed      says how it wanders
    tracking  by how much it may wander in each second, either way, in percent of a track
    skew      the same, in 0.1 µs
    reel      by how much tracking moves along the reel, in percent of a track in ten minutes
    """

    seed: int
    tracking: int = 0
    skew: int = 0
    reel: int = 0


@dataclass(frozen=True, slots=True)
class Player:
    """How far the player is out of adjustment when the recording starts.

    tracking  how far the heads are off the middle of the track, in percent of its width
    skew      time step where the heads change over, in 0.1 µs; its sign is the way it bends
    """

    tracking: int = 0
    skew: int = 0
    drift: Drift | None = None


@dataclass(frozen=True, slots=True)
class Recorder:
    """The machine that records.

    tracking  how far its control stands off its fixed position, in percent of a track
    snr       signal-to-noise of one recording made on it, in 0.1 dB; None: the bench's
    """

    name: str = "recorder"
    tracking: int = 0
    snr: int | None = None


class SoundMode(StrEnum):
    BY_HAND = "by hand"
    LIMITER = "limiter"
    AUTOMATIC = "automatic"


@dataclass(frozen=True, slots=True)
class SoundLevel:
    """How the sound level is set; ``gain`` is the knob, in 0.1 dB, before limiter or AGC."""

    mode: SoundMode = SoundMode.BY_HAND
    gain: int = 0


@dataclass(frozen=True, slots=True)
class Machines:
    """How the two machines stand while one recording is made.

    ``picture_gain`` is in 0.1 dB; None leaves the picture level to the recorder.
    """

    player: Player = Player()
    recorder: Recorder = Recorder()
    picture_gain: int | None = None
    sound: SoundLevel = SoundLevel()

    @property
    def wanders(self) -> bool:
        """Whether something changes while the tape runs."""
        return self.player.drift is not None or self.sound.mode is SoundMode.AUTOMATIC


WELL_ADJUSTED = Machines()
