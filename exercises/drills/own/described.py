"""An edit master and a wanted change, as an instructor describes them."""

import json
from collections.abc import Iterator
from dataclasses import asdict, dataclass, replace
from typing import Literal, Self

from exercises.drills.asks import Json
from exercises.drills.change import Change
from exercises.drills.choose_mode.scenario import Task, news, stays
from exercises.drills.wants import SIDES, Side
from exercises.tape import Bench, Laid, Rate, Run, Source, Take, Tape, Track
from exercises.tape.track import PULSES, Pulses

What = Literal["both", "picture", "sound", "black", "nothing"]
Phase = Literal["anew", "on", "keep"]
Freed = Literal["nothing", "after", "beside"]

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
class Described:
    """All that an instructor says of a master and of a change wanted on it, in frames.

    `recorded` is in the order in which it was recorded. `freed` is what may be lost beside what
    the change replaces: nothing, all that comes `after` its edit in, or the other track
    `beside` it. `lock` and `erase_gap` are in seconds, as people know their benches.
    """

    rate: str
    length: int
    lock: int
    erase_gap: int
    story: str
    wish: str
    recorded: tuple[Recorded, ...]
    source: str
    takes: tuple[tuple[int, int], ...]
    picture: str
    sound: str
    tracks: tuple[Side, ...]
    in_: int
    out: int
    at: int
    freed: Freed
    instead: str = ""

    @property
    def bench(self) -> Bench:
        usual = Bench.default(Rate(self.rate))
        second = usual.rate.nominal
        return replace(usual, lock=self.lock * second, erase_gap=self.erase_gap * second)

    @property
    def end(self) -> int:
        """The first frame of the master beyond the change."""
        return self.at + self.out - self.in_

    def master(self) -> Tape:
        tape = Tape.blank(self.length)
        for each in self.recorded:
            tape = each.over(tape)
        return tape

    def task(self) -> Task:
        """What `choose the mode` judges: what is to be new and what is to stay."""
        master, bench = self.master(), self.bench
        source = Source(self.source, tuple(Take(*take) for take in self.takes))
        change = Change(source=source, in_=self.in_, out=self.out, at=self.at, tracks=self.tracks)
        kept = stays(
            master,
            bench,
            change,
            loose=SIDES if self.freed == "beside" else (),
            free_from=self.at if self.freed == "after" else self.length,
            pushed=False,
        )
        return Task(bench, master, change, (*news(change, None), *kept))

    def as_json(self) -> Json:
        kept: Json = json.loads(json.dumps(asdict(self)))  # lists for tuples, as it comes back
        return kept

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        lists = {
            "recorded": tuple(Recorded(**each) for each in stored["recorded"]),
            "takes": tuple((first, last) for first, last in stored["takes"]),
            "tracks": tuple(stored["tracks"]),
        }
        return cls(**{**stored, **lists})

    def holes(self) -> Iterator[str]:
        """What is missing for a clean copy, in phrases for whoever writes the drill."""
        task, source = self.task(), self.task().change.source
        take = source.take_at(self.in_)
        if take is None:
            yield "No take holds the edit in: nothing is copied there."
        elif take.end < self.out:
            yield "The take ends before the edit out."
        if take and self.in_ - take.start < self.bench.lock:
            yield "The take has less run-up before the edit in than the bench needs."
        if task.master.run_up(self.at) < self.bench.lock:
            yield (
                "The edit master has less run-up, over pulses in phase, before the edit in than "
                "the bench needs."
            )
