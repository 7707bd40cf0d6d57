"""A level to be set on paper: what the meter shows, what is right, what a believer does."""

from collections.abc import Collection
from dataclasses import dataclass
from enum import StrEnum

from exercises.drills.asks import Amount, Json
from exercises.drills.rules import Rule
from exercises.tape.levels import WHITE

HOT = "hotter-is-better"
EVENS = "agc-evens-out"
LIFTS = "limiter-is-agc"


class Mode(StrEnum):
    """The ways in which a recorder takes its sound level."""

    HAND = "hand"
    LIMITER = "limiter"
    AUTOMATIC = "automatic"
    BOTH = "both"


@dataclass(frozen=True, slots=True)
class Scale:
    """A meter: its unit, where the loudest or brightest belongs, and where the scale ends.

    `band` is how far off is still right: common practice, 1 dB at line-up and 2 IRE.
    """

    name: str
    unit: str
    mark: int
    end: int
    band: int


VU = Scale("VU meter, from −20 to +3", "dB", 0, 3, 1)
IRE = Scale("waveform display, up to 120 IRE", "IRE", WHITE, 120, 2)


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """`reading` is what the meter shows at most, as the knob stands.

    `mode` is the right sound mode, None where no mode is asked for; `soft` tells that there
    are soft parts that somebody may wish to lift.
    """

    scale: Scale
    reading: int
    story: str
    heard: str
    rule: Rule
    mode: Mode | None = None
    soft: bool = False

    def beliefs(self) -> list[str]:
        return [HOT, *([EVENS] if self.mode else []), *([LIFTS] if self.soft else [])]

    def turn(self, beliefs: Collection[str]) -> int:
        """How far the level is turned up; below 0 it is turned down."""
        return (self.scale.end if HOT in beliefs else self.scale.mark) - self.reading

    def chosen(self, beliefs: Collection[str]) -> Mode | None:
        """The mode, with whatever a believer switches on beside it."""
        if self.mode is None:
            return None
        limits = self.mode is Mode.LIMITER or (self.soft and LIFTS in beliefs)
        if EVENS in beliefs:
            return Mode.BOTH if limits else Mode.AUTOMATIC
        return Mode.LIMITER if limits else Mode.HAND

    def answer(self, beliefs: Collection[str]) -> Json:
        mode = self.chosen(beliefs)
        return {"turn": self.turn(beliefs), **({"mode": mode.value} if mode else {})}

    def ask(self) -> Amount:
        return Amount(
            name="turn",
            legend="By how much do you turn the level? Turning it down has a minus.",
            unit=self.scale.unit,
            least=-99,
            most=99,
            signed=True,
        )
