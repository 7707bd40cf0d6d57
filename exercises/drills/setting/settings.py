"""The figures of a learner's own bench, as a kind of drill may ask them."""

from dataclasses import asdict, dataclass, replace
from enum import StrEnum
from typing import Self

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import length
from exercises.tape import AutomaticGain, Bench, Limiter, Limits, Rate

USUAL_PRE_ROLL = 5  # seconds; common practice
USUAL_SOURCE_RUN_UP = 10  # seconds; common practice
# Seconds, least and most: no bench was met beyond these, and drills are made for none.
PRE_ROLL = (1, 20)
SOURCE_RUN_UP = (1, 60)
LONGEST_ERASE_GAP = 10


class Meter(StrEnum):
    """What a bench may have to read levels and tracking from."""

    WAVEFORM = "waveform"
    PICTURE_NEEDLE = "picture-needle"
    VU = "vu"
    TRACKING = "tracking"


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """What an instructor has said of the bench; lengths are in frames of `bench.rate`.

    bench          what the machines need (see `exercises.tape.Bench`)
    pre_roll       how far both machines are wound back before an edit in
    source_run_up  run-up that is wanted before the action when shooting
    meters         which meters there are
    either_rate    nobody has set anything: questions may be at either rate
    """

    bench: Bench
    pre_roll: int
    source_run_up: int
    meters: frozenset[Meter] = frozenset(Meter)
    either_rate: bool = False

    @classmethod
    def usual(cls, rate: Rate | None = None) -> Self:
        """Common practice: what holds where no instructor has set anything."""
        return cls._usual(rate) if rate else replace(cls._usual(Rate.R25), either_rate=True)

    @classmethod
    def _usual(cls, rate: Rate) -> Self:
        return cls(
            bench=Bench.default(rate),
            pre_roll=USUAL_PRE_ROLL * rate.nominal,
            source_run_up=USUAL_SOURCE_RUN_UP * rate.nominal,
        )

    @property
    def drop_frame(self) -> bool:
        return self.bench.drop_frame

    @property
    def in_words(self) -> str:
        """The figures that answers are judged by, in a line."""
        bench, drops = self.bench, "drop-frame" if self.drop_frame else "non-drop"
        code = f", {drops} time code" if bench.rate is Rate.R29_97 else ""
        figures = {
            "pre-roll": self.pre_roll,
            "lock": bench.lock,
            "relock": bench.relock,
            "erase gap": bench.erase_gap,
        }
        lengths = (f"{name} {length(frames, bench.rate)}" for name, frames in figures.items())
        return f"{bench.rate.label} frames a second{code}, {', '.join(lengths)}"

    def at(self, rate: Rate) -> Self:
        """The settings of a question that was drawn at a rate."""
        return self.usual(rate) if self.either_rate else self

    def refusals(self) -> dict[str, str]:
        """What no bench can have, a sentence by figure; empty for a bench that can be."""
        second, bench = self.bench.rate.nominal, self.bench
        within = {
            "pre_roll": (self.pre_roll, *(each * second for each in PRE_ROLL)),
            "source_run_up": (self.source_run_up, *(each * second for each in SOURCE_RUN_UP)),
            "lock": (bench.lock, second, self.pre_roll),
            "relock": (bench.relock, 1, max(bench.lock, second)),
            "erase_gap": (bench.erase_gap, 0, LONGEST_ERASE_GAP * second),
        }
        found = {
            figure: f"At least {least} and at most {most} frames can be worked with here."
            for figure, (value, least, most) in within.items()
            if not least <= value <= most
        }
        if bench.lock > self.pre_roll:
            found["lock"] = "Machines that take longer to lock than the pre-roll are never locked."
        if self.drop_frame and bench.rate is Rate.R25:
            found["drop_frame"] = "Time code at 25 frames a second leaves no labels out."
        return found

    def as_json(self) -> Json:
        return {
            "bench": {**asdict(self.bench), "rate": self.bench.rate.label},
            "pre_roll": self.pre_roll,
            "source_run_up": self.source_run_up,
            "meters": sorted(self.meters),
            "either_rate": self.either_rate,
        }

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        return cls(
            bench=_bench(stored["bench"]),
            pre_roll=stored["pre_roll"],
            source_run_up=stored["source_run_up"],
            meters=frozenset(map(Meter, stored["meters"])),
            either_rate=stored["either_rate"],
        )


def _bench(stored: Json) -> Bench:
    nested = {
        "rate": Rate(stored["rate"]),
        "limiter": Limiter(**stored["limiter"]),
        "automatic_gain": AutomaticGain(**stored["automatic_gain"]),
        "limits": Limits(**stored["limits"]),
    }
    return Bench(**{**stored, **nested})


USUAL = Settings.usual()
