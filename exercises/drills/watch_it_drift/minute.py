"""A minute of a player's tracking as it wanders, by the tape model, and when it is too much."""

from dataclasses import dataclass

from exercises.drills.asks import Json
from exercises.drills.draw import Draw
from exercises.tape import Drift, Player, Rate
from exercises.tape.drift import adjustments
from exercises.tape.geometry import envelope_loss
from exercises.tape.limits import LIMITS

SECONDS, EVERY = 60, 5
STEPS = SECONDS // EVERY
CLEAR, PLAIN = 45, 54  # percent of a track: no streaks up to here, plain ones from here on


@dataclass(frozen=True, slots=True)
class Minute:
    """How the player stands in each second, in percent of a track."""

    player: Player
    tracking: tuple[int, ...]

    @property
    def steps(self) -> tuple[int, ...]:
        """What is looked at."""
        return self.tracking[::EVERY]

    @property
    def due(self) -> int | None:
        """The first step with a noise band, counted from 0; None where there is none."""
        return next((step for step, off in enumerate(self.steps) if too_far(off)), None)

    @property
    def is_plain(self) -> bool:
        """Whether nothing is in doubt up to then: neither in a step nor between two."""
        if self.due is None:
            return all(abs(off) <= CLEAR for off in self.tracking)
        before = self.tracking[: EVERY * (self.due - 1) + 1] if self.due else ()
        clear = all(abs(off) <= CLEAR for off in before)
        return self.due > 0 and clear and abs(self.steps[self.due]) >= PLAIN

    def making(self) -> Json:
        drift = self.player.drift
        told = {"seed": drift.seed, "tracking": drift.tracking} if drift else {}
        return {"player": {"tracking": self.player.tracking, "drift": told}}


def too_far(tracking: int) -> bool:
    """Whether the tape model calls it a noise band."""
    return round(envelope_loss(tracking)) > LIMITS.envelope_loss


def minute(draw: Draw, rate: Rate, *, wander: int) -> Minute:
    """Begun well adjusted, wandering by up to so many percent a second."""
    player = Player(tracking=draw.whole(-10, 10), drift=Drift(draw.below(10**9), tracking=wander))
    held = adjustments(player, SECONDS * rate.nominal, rate)
    return Minute(player, tuple(max(-100, min(100, each.tracking)) for each in held))
