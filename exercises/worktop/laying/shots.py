"""The shots of a practical in frames: what is wanted, what was laid before, the edit sheet."""

from collections.abc import Iterator, Mapping, Sequence
from typing import NamedTuple

from exercises.drills.asks import Json
from exercises.signal.speech.line import lines
from exercises.tape import Bench
from exercises.worktop.laying.tapes import reel_of
from exercises.worktop.practical_shot import EarlierEdit, TrackChoice, WantedShot
from exercises.worktop.set_up import SheetRow
from exercises.worktop.shelf_tape import LoggedTake, ShelfTape

LEAD, TAIL = 8, 10  # frames before a line and after it that a wanted line has


class LaidShot(NamedTuple):
    """`[in_, out)` of a source tape, from frame `at` of the master on."""

    tape: str
    take: LoggedTake
    track: TrackChoice
    in_: int
    out: int
    at: int

    @property
    def end(self) -> int:
        return self.at + self.out - self.in_

    @property
    def sides(self) -> tuple[str, ...]:
        return ("picture", "sound") if self.track == "both" else (self.track,)


class ShotLayout:
    """Lays shots out, given the tapes that they are on."""

    def __init__(self, tapes: Sequence[ShelfTape], bench: Bench) -> None:
        self.bench = bench
        self.takes: Mapping[str, tuple[str, LoggedTake]] = {
            take.name: (tape.name, take) for tape in tapes for take in tape.takes
        }

    def laid(self, shots: Sequence[WantedShot]) -> Iterator[LaidShot]:
        """Each where it is told to lie, or right after the one before on its tracks."""
        reached = {"picture": 0, "sound": 0}
        for shot in shots:
            tape, take = self.takes[shot.take]
            in_, out = self.range_of(shot, take)
            laid = LaidShot(tape, take, shot.track, in_, out, at=0)
            after = max(reached[side] for side in laid.sides)
            at = after if shot.at is None else shot.at * self.bench.rate.nominal
            laid = laid._replace(at=at)
            reached |= {side: max(reached[side], laid.end) for side in laid.sides}
            yield laid

    def range_of(self, shot: WantedShot, take: LoggedTake) -> tuple[int, int]:
        """The edit in and edit out of a wanted shot."""
        second = self.bench.rate.nominal
        if shot.line is None:
            in_ = take.action + shot.start * second
            return in_, in_ + shot.lasts * second
        placed = reel_of(take, self.bench).placed
        heard = placed[shot.line - 1].at, placed[(shot.through or shot.line) - 1].end
        first, last = (round(each * self.bench.rate.fraction / 1000) for each in heard)
        return first - LEAD, last + TAIL

    def edits(self, earlier: Sequence[EarlierEdit]) -> Iterator[Json]:
        """As a session document has them."""
        laid = self.laid([each.shot for each in earlier])
        return (as_edit(made, shot) for made, shot in zip(earlier, laid, strict=True))

    def sheet(self, shots: Sequence[WantedShot]) -> Iterator[SheetRow]:
        """The edit sheet, written from the shot log: with whatever the log has wrong."""
        for shot, laid in zip(shots, self.laid(shots), strict=True):
            tape, take = self.takes[shot.sheet or shot.take]
            in_ = laid.in_ - laid.take.action + take.logged.action
            yield SheetRow(
                tape=tape,
                take=take.name,
                track=shot.track,
                source_in=in_,
                source_out=in_ + laid.out - laid.in_,
                master_in=laid.at,
                shows=take.log,
                says=said(shot, take),
            )


def said(shot: WantedShot, take: LoggedTake) -> str:
    if shot.line is None:
        return ""
    names = take.lines[shot.line - 1 : shot.through or shot.line]
    return " ".join(lines()[name].text for name in names)


def as_edit(made: EarlierEdit, shot: LaidShot) -> Json:
    edit: Json = {"mode": made.mode, "source": shot.tape, "in": shot.in_}
    edit |= {"out": shot.out - made.short, "at": shot.at + made.late}
    if made.mode == "insert":
        edit |= {side: side in shot.sides for side in ("picture", "sound")}
    if made.tracking:
        edit["player"] = {"tracking": made.tracking}
    if gain := made.gain - shot.take.sound:
        edit["sound_level"] = {"mode": "by hand", "gain": gain}
    return edit
