"""How far the player's heads are from the tracks of the cassette in it."""

from dataclasses import dataclass

from exercises.drills.asks import Json
from exercises.drills.kinds.set_tracking.meter import TrackingMeter
from exercises.tape import Rate
from exercises.worktop.shelf_tape import ShelfTape
from exercises.worktop.worktop import REEL, STEP_SKEW, STEP_TRACKING, PlayerStand


@dataclass(frozen=True, slots=True)
class Adjusted:
    """The player as it stands, with a cassette in it: errors in percent of a track, and 0.1 µs."""

    player: PlayerStand
    tape: ShelfTape
    rate: Rate

    def tracking_at(self, frame: int) -> int:
        """The tracks of a reel wander: what was right at its start is not at its end."""
        seconds = frame / self.rate.nominal
        wanted = self.tape.tracking + self.tape.reel * seconds / REEL
        return within(STEP_TRACKING * self.player.tracking - round(wanted), 100)

    @property
    def skew(self) -> int:
        return within(STEP_SKEW * self.player.skew - self.tape.skew, 200)

    @property
    def meter(self) -> int:
        """What the tracking meter shows, in hundredths of its scale."""
        return TrackingMeter(top=self.tape.signal).at(self.tracking_at(self.player.at))

    def as_made(self, in_: int) -> Json:
        """The player of an edit that begins at a frame of the source, as a document has it."""
        told: Json = {"tracking": self.tracking_at(in_), "skew": self.skew}
        if self.tape.reel:
            # Nothing wanders by chance, so any seed does.
            told["drift"] = {"seed": 0, "reel": -self.tape.reel}
        return told


def within(value: int, most: int) -> int:
    return max(-most, min(most, value))
