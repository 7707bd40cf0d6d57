"""An edit master, as an instructor describes it: what was recorded on it, in order."""

import json
from dataclasses import asdict, dataclass, replace
from typing import Literal, Self

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import length
from exercises.tape import SIDES, Bench, Laid, Rate, Run, Side, Tape, Track
from exercises.tape.track import PULSES, Pulses

What = Literal["both", "picture", "sound", "black", "nothing"]
Phase = Literal["anew", "on", "keep"]

BLACK = "black"


@dataclass(frozen=True, slots=True, kw_only=True)
class Recorded:
    """`[start, end)` of the master, recorded or (`nothing`) wiped, over what was there before.

    `pulses`: `anew` begins a phase there, `on` runs on from the pulses before it, `keep` lays
    none and leaves those that are there.
    """

    start: int
    end: int
    what: What
    name: str
    pulses: Phase

    @property
    def tracks(self) -> tuple[Side, ...]:
        return {"picture": SIDES[:1], "sound": SIDES[1:]}.get(self.what, SIDES)

    def over(self, tape: Tape) -> Tape:
        """The tape once this is recorded on it."""
        picture, sound = (
            self._laid(track) if side in self.tracks else track
            for side, track in zip(SIDES, (tape.picture, tape.sound), strict=True)
        )
        return replace(tape, control=self._pulses(tape.control), picture=picture, sound=sound)

    def _laid(self, track: Track[Laid]) -> Track[Laid]:
        # Counted along the master, so that no two stretches of one name are taken for the same.
        name = BLACK if self.what == "black" else self.name
        runs = [Run(self.start, self.end, Laid(name, self.start, 1, True))]
        return track.over(self.start, self.end, [] if self.what == "nothing" else runs, cause=None)

    def _pulses(self, control: Track[Pulses]) -> Track[Pulses]:
        if self.what == "nothing":
            return control.over(self.start, self.end, [], cause=None)
        if self.pulses == "keep":
            return control
        before = control.at(self.start - 1) if self.pulses == "on" else None
        begin = before.start if before else self.start
        return control.over(self.start, self.end, [Run(begin, self.end, PULSES)], cause=None)


@dataclass(frozen=True, slots=True, kw_only=True)
class OnMaster:
    """A bench and the edit master on it, in frames: what every described drill begins with.

    `recorded` is in the order in which it was recorded. `lock` and `erase_gap` are in seconds,
    as people know their benches.
    """

    rate: str
    length: int
    lock: int
    erase_gap: int
    story: str
    recorded: tuple[Recorded, ...]

    @property
    def bench(self) -> Bench:
        usual = Bench.default(Rate(self.rate))
        second = usual.rate.nominal
        return replace(usual, lock=self.lock * second, erase_gap=self.erase_gap * second)

    @property
    def figures(self) -> str:
        """The bench in words."""
        bench = self.bench
        gap = length(bench.erase_gap, bench.rate) if bench.erase_gap else "nothing"
        return (
            f"{bench.rate.label} frames a second, run-up {length(bench.lock, bench.rate)}, "
            f"an assemble wipes {gap} past its end"
        )

    def master(self) -> Tape:
        tape = Tape.blank(self.length)
        for each in self.recorded:
            tape = each.over(tape)
        return tape

    def as_json(self) -> Json:
        kept: Json = json.loads(json.dumps(asdict(self)))  # lists for tuples, as it comes back
        return kept

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        recorded = tuple(Recorded(**each) for each in stored["recorded"])
        return cls(**{**stored, "recorded": recorded})
