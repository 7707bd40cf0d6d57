"""From what an author tells of a practical to frames at a learner's own bench."""

from dataclasses import asdict
from functools import partial

from exercises.drills.asks import Json
from exercises.drills.setting.settings import USUAL_PRE_ROLL, Settings
from exercises.tape import Rate
from exercises.worktop.laying.shots import ShotLayout
from exercises.worktop.laying.tapes import as_source, laid_tape
from exercises.worktop.laying.wanted import as_wanted
from exercises.worktop.practical import BLACK, Practical
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf_tape import ShelfTape

POST_ROLL = 2  # seconds; common practice
RUNS = 3  # an edit is rehearsed, recorded and looked back at, each with its pre-roll


def lay_out(practical: Practical, settings: Settings) -> SetUp:
    """The practical at a bench with these settings; at 25 frames a second where nobody set any.

    The film is the same at every bench; run-ups on source tapes are as long as its machines need.
    Raises DocumentError for what no session document can hold, such as shots that overlap.
    """
    return Layout(practical, settings.at(Rate.R25)).set_up()


class Layout:
    def __init__(self, practical: Practical, settings: Settings) -> None:
        self.practical, self.settings = practical, settings
        self.bench = settings.bench
        self.second = self.bench.rate.nominal
        self.tapes = tuple(laid_tape(tape, self.bench) for tape in practical.tapes)
        self.shots = ShotLayout(self.tapes, self.bench)

    def set_up(self) -> SetUp:
        return SetUp(
            document=self.document(),
            tapes=self.tapes,
            sheet=tuple(self.shots.sheet(self.practical.shots)),
            pre_roll=self.settings.pre_roll,
            post_roll=POST_ROLL * self.second,
            left=asdict(self.practical.left),
            minutes=self.practical.minutes + self.further_minutes(),
            unaided=self.practical.unaided,
        )

    def document(self) -> Json:
        earlier = list(self.shots.edits(self.practical.earlier))
        return {
            "rate": self.bench.rate.label,
            "bench": {k: v for k, v in asdict(self.bench).items() if k != "rate"},
            "master": {"length": self.practical.length * self.second, "recorded": self.passes()},
            "sources": {tape.name: as_source(tape, self.bench) for tape in self.tapes},
            "edits": earlier,
            "brief": self.brief() | {"after": len(earlier)},
        }

    def further_minutes(self) -> int:
        """What a pre-roll beyond the usual costs in all edits, to the nearest minute."""
        further = max(0, self.settings.pre_roll - USUAL_PRE_ROLL * self.second)
        return round(RUNS * len(self.practical.shots) * further / (60 * self.second))

    def passes(self) -> list[Json]:
        return [asdict(each) | self.within(each.start, each.end) for each in self.practical.passes]

    def within(self, start: int, end: int) -> Json:
        return {"start": start * self.second, "end": end * self.second}

    @property
    def locked(self) -> int:
        """The first frame of the master that can play well: before it, no machine has locked."""
        return max(self.bench.lock, self.bench.relock)

    def brief(self) -> Json:
        shots = self.practical.shots
        wanted = partial(as_wanted, shots, list(self.shots.laid(shots)), locked=self.locked)
        kept = [asdict(each) | self.within(each.start, each.end) for each in self.practical.kept]
        brief: Json = {side: wanted(side) for side in ("picture", "sound")}
        brief |= {"tolerance": self.practical.tolerance, "untouched": kept}
        blacks = [tape.name for tape in self.tapes if holds_black(tape)]
        return brief | ({"black": blacks[0]} if blacks else {})


def holds_black(tape: ShelfTape) -> bool:
    return all(take.shows == BLACK for take in tape.takes)
