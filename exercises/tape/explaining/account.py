"""One recording and what can be told of it."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

from exercises.tape.bench import Bench
from exercises.tape.edit import Assemble, Edit, Insert
from exercises.tape.judging.brief import Brief
from exercises.tape.judging.judgement import Judgement, judge
from exercises.tape.judging.ranges import asked, kept_on, overlapping
from exercises.tape.judging.stretches import stretches
from exercises.tape.recording import record, unsettled
from exercises.tape.source import Take
from exercises.tape.tape import SIDES, Side, Tape, TrackName
from exercises.tape.timecode import label
from exercises.tape.wording import lasting, run_up, span

MARK = 1_000_000_000  # the index that the recording is known by; no session has so many


class ShortRunUp(NamedTuple):
    """Too little run-up before a frame of a source tape; of the master, if ``source`` is None."""

    source: str | None
    at: int
    frames: int


@dataclass(frozen=True)
class Account:
    """A recording on a tape as it was, with the brief that it was made for, if any."""

    tape: Tape
    edit: Edit
    bench: Bench
    brief: Brief | None = None

    @cached_property
    def after(self) -> Tape:
        return record(self.tape, self.edit, self.bench, MARK)

    @cached_property
    def judgement(self) -> Judgement:
        """The tape afterwards, by the brief; what it was before is what had to stay."""
        brief = self.brief or Brief()
        return judge(brief, self.after, before=self.tape, bench=self.bench)

    @property
    def mode(self) -> str:
        return "assemble" if isinstance(self.edit, Assemble) else "insert"

    @cached_property
    def sides(self) -> tuple[Side, ...]:
        """The tracks, but control, that it records."""
        if isinstance(self.edit, Insert):
            chosen = {"picture": self.edit.picture, "sound": self.edit.sound}
            return tuple(side for side in SIDES if chosen[side])
        return SIDES

    @cached_property
    def left(self) -> tuple[Side, ...]:
        """The tracks, but control, that it leaves as they were."""
        return tuple(side for side in SIDES if side not in self.sides)

    @cached_property
    def bare(self) -> tuple[tuple[int, int], ...]:
        """Where there were no pulses before."""
        found = stretches(self.tape.control.laid, self.edit.at, self.edit.end)
        return tuple((start, end) for start, end, run in found if run is None)

    @property
    def wiped(self) -> tuple[int, int]:
        """What is wiped past its end; an empty range after an insert."""
        gap = self.bench.erase_gap if self.mode == "assemble" else 0
        return self.edit.end, min(self.edit.end + gap, self.tape.length)

    @cached_property
    def unlocked(self) -> int:
        """How many frames of it were copied before both machines were locked."""
        return min(unsettled(self.tape, self.edit, self.bench), self.edit.out - self.edit.in_)

    @cached_property
    def short(self) -> tuple[ShortRunUp, ...]:
        """The run-ups that were too short, the source's first."""
        edit = self.edit
        run_ups = (
            ShortRunUp(edit.source.name, edit.in_, edit.source.run_up(edit.in_)),
            ShortRunUp(None, edit.at, self.tape.run_up(edit.at)),
        )
        return tuple(each for each in run_ups if each.frames < self.bench.lock)

    @property
    def new_takes(self) -> Iterator[Take]:
        """The takes that begin within it: there the player meets a jump."""
        within = self.edit.source.takes_in(self.edit.in_, self.edit.out)
        return (take for take in within if take.start > self.edit.in_)

    @property
    def in_phase(self) -> bool:
        """Whether an assemble's pulses run on from those before."""
        return 0 < self.tape.run_up(self.edit.at) >= self.bench.lock

    def asked(self, track: TrackName, start: int, end: int) -> bool:
        """Whether anybody wants, or wants to keep, any of these frames; without a brief, yes."""
        if self.brief is None:
            return True
        spoken = (asked(self.brief, track), kept_on(self.brief, track))
        return any(any(overlapping(ranges, start, end)) for ranges in spoken)

    def code(self, frame: int) -> str:
        return label(frame, self.bench.rate, self.bench.drop_frame)

    def long(self, frames: int) -> str:
        return lasting(frames, self.bench.rate)

    def run_up(self, frames: int) -> str:
        return run_up(frames, self.bench.rate)

    def span(self, start: int, end: int) -> str:
        return span(start, end, self.bench.rate, self.bench.drop_frame)
