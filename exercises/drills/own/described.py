"""An edit master and a wanted change, as an instructor describes them."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal, Self

from exercises.drills.asks import Json
from exercises.drills.kinds.choose_the_mode.scenario import Task, news, stays
from exercises.drills.own.master import OnMaster
from exercises.drills.setting.change import Change
from exercises.tape import SIDES, Side, Source, Take

Freed = Literal["nothing", "after", "beside"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Described(OnMaster):
    """All that an instructor says of a master and of a change wanted on it, in frames.

    `freed` is what may be lost beside what the change replaces: nothing, all that comes `after`
    its edit in, or the other track `beside` it.
    """

    wish: str
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
    def end(self) -> int:
        """The first frame of the master beyond the change."""
        return self.at + self.out - self.in_

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

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        lists = {
            "takes": tuple((first, last) for first, last in stored["takes"]),
            "tracks": tuple(stored["tracks"]),
        }
        return super(Described, cls).from_json({**stored, **lists})

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
