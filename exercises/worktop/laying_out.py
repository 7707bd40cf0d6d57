"""From what an author tells of a practical to frames at a learner's own bench."""

from collections.abc import Iterator, Sequence
from dataclasses import asdict
from fractions import Fraction

from exercises.drills.asks import Json
from exercises.drills.setting.settings import Settings
from exercises.signal.speech.reel import Reel, reel
from exercises.tape import Bench, Rate
from exercises.worktop.practical import (
    EarlierEdit,
    Practical,
    PracticalTake,
    PracticalTape,
    WantedShot,
)
from exercises.worktop.set_up import LoggedTake, SetUp, ShelfTape

SPARE = 20  # seconds of tape behind the last take
POST_ROLL = 2  # seconds; common practice
LEAD, TAIL = 8, 10  # frames before a line and after it that a wanted line has
PAUSE = 1500  # ms between two lines of a take


def lay_out(practical: Practical, settings: Settings) -> SetUp:
    """The practical at a bench with these settings; at 25 frames a second where nobody set any.

    Lengths grow with what the machines need, as those of questions do (`Scene`).
    """
    return Layout(practical, settings.at(Rate.R25)).set_up()


class Layout:
    def __init__(self, practical: Practical, settings: Settings) -> None:
        self.practical, self.settings = practical, settings
        self.bench = settings.bench
        usual = Bench.default(self.bench.rate)
        growth = max(
            Fraction(1),
            Fraction(self.bench.lock, usual.lock),
            Fraction(self.bench.erase_gap, usual.erase_gap),
        )
        self.second = self.bench.rate.nominal * growth
        self.tapes = tuple(map(self.tape, practical.tapes))
        self.takes = {take.name: (tape, take) for tape in self.tapes for take in tape.takes}

    def set_up(self) -> SetUp:
        earlier = [self.edit(each, at) for each, at in self.placed_earlier()]
        document = {
            "rate": self.bench.rate.label,
            "bench": {k: v for k, v in asdict(self.bench).items() if k != "rate"},
            "master": {"length": self.frames(self.practical.length), "recorded": self.passes()},
            "sources": {tape.name: self.source(tape) for tape in self.tapes},
            "edits": earlier,
            "brief": self.brief() | {"after": len(earlier)},
        }
        return SetUp(
            document=document,
            tapes=self.tapes,
            pre_roll=self.settings.pre_roll,
            post_roll=POST_ROLL * self.bench.rate.nominal,
            left=asdict(self.practical.left),
            minutes=self.practical.minutes,
            unaided=self.practical.unaided,
        )

    def frames(self, seconds: int) -> int:
        return round(seconds * self.second)

    def tape(self, told: PracticalTape) -> ShelfTape:
        takes, reached = [], 0
        for take in told.takes:
            takes.append(self.take(take, reached + self.frames(take.before)))
            reached = takes[-1].end
        figures = {
            name: getattr(told, name)
            for name in ("tracking", "skew", "reel", "signal", "white", "sound")
        }
        length = reached + self.frames(SPARE)
        return ShelfTape(name=told.name, length=length, takes=tuple(takes), **figures)

    def take(self, told: PracticalTake, start: int) -> LoggedTake:
        action = start + self.bench.lock * told.run_up // 100
        return LoggedTake(
            name=told.name,
            start=start,
            action=action,
            end=action + self.frames(told.lasts),
            shows=told.shows,
            log=told.log,
            lines=told.lines,
        )

    def source(self, tape: ShelfTape) -> Json:
        return {"takes": [self.recorded(tape, take) for take in tape.takes]}

    def recorded(self, tape: ShelfTape, take: LoggedTake) -> Json:
        told: Json = {"start": take.start, "end": take.end}
        if take.shows == "black":
            return told | {"levels": "none"}
        told["levels"] = {"white": tape.white, "sound": tape.sound}
        if take.lines:
            marks = self.reel_of(take).marks(self.bench.rate)
            told["sync"] = True
            told["marks"] = {
                "words": [{"start": each.start, "end": each.end} for each in marks.words],
                "breaths": [{"start": each.start, "end": each.end} for each in marks.breaths],
            }
        return told

    def reel_of(self, take: LoggedTake) -> Reel:
        begin = round(1000 * (take.action + self.bench.rate.nominal) / self.bench.rate.fraction)
        return reel(*take.lines, begin=begin, pause=PAUSE)

    def passes(self) -> list[Json]:
        return [
            {"start": self.frames(each.start), "end": self.frames(each.end), "what": each.what}
            for each in self.practical.passes
        ]

    def range_of(self, shot: WantedShot) -> tuple[str, int, int]:
        """The tape, edit in and edit out of a wanted shot."""
        tape, take = self.takes[shot.take]
        if shot.line is None:
            in_ = take.action + self.frames(shot.start)
            return tape.name, in_, in_ + self.frames(shot.lasts)
        spoken = self.reel_of(take).placed[shot.line - 1]
        heard = (spoken.at, spoken.end)
        first, last = (round(each * self.bench.rate.fraction / 1000) for each in heard)
        return tape.name, first - LEAD, last + TAIL

    def placed_earlier(self) -> Iterator[tuple[EarlierEdit, int]]:
        ends = self.placed([each.shot for each in self.practical.earlier])
        return zip(self.practical.earlier, ends, strict=True)

    def placed(self, shots: Sequence[WantedShot]) -> list[int]:
        """Where each begins on the master: as told, or right after the one before on its tracks."""
        reached = {"picture": 0, "sound": 0}
        starts = []
        for shot in shots:
            _, in_, out = self.range_of(shot)
            sides = ("picture", "sound") if shot.track == "both" else (shot.track,)
            at = max(reached[side] for side in sides) if shot.at is None else self.frames(shot.at)
            reached |= dict.fromkeys(sides, at + out - in_)
            starts.append(at)
        return starts

    def edit(self, made: EarlierEdit, at: int) -> Json:
        tape, in_, out = self.range_of(made.shot)
        edit: Json = {"mode": made.mode, "source": tape, "in": in_, "out": out, "at": at}
        if made.mode == "insert":
            edit |= {side: made.shot.track in ("both", side) for side in ("picture", "sound")}
        if made.tracking:
            edit["player"] = {"tracking": made.tracking}
        if made.gain:
            edit["sound_level"] = {"mode": "by hand", "gain": made.gain}
        return edit

    def brief(self) -> Json:
        shots = list(zip(self.practical.shots, self.placed(self.practical.shots), strict=True))
        kept = [
            {
                "track": each.track,
                "start": self.frames(each.start),
                "end": self.frames(each.end),
            }
            for each in self.practical.kept
        ]
        return {
            "picture": list(self.wanted(shots, "picture")),
            "sound": list(self.wanted(shots, "sound")),
            "tolerance": self.practical.tolerance,
            "untouched": kept,
        }

    def wanted(self, shots: list[tuple[WantedShot, int]], side: str) -> Iterator[Json]:
        for shot, at in sorted(shots, key=lambda each: each[1]):
            if shot.track in ("both", side):
                tape, in_, out = self.range_of(shot)
                yield {"source": tape, "in": in_, "out": out, "at": at}
