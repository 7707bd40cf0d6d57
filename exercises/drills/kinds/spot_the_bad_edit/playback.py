"""What is seen and heard while a tape is played, row by row, and never why."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from exercises.drills.kinds.spot_the_bad_edit.wear import Wear, dropping_out, drops
from exercises.drills.setting.quay_street import Shot
from exercises.tape import Bench, Laid, Passage, Tape, passages

# A machine without pulses can't lock and its counter, which counts pulses, stands still.
# Common practice.
STANDS = "Servo not locked, counter standing still"
SEEKS = "Servo not locked"
LOCKED = "Servo locked"

# What a place that is worn does, and what tracking does that is off (common practice).
STREAKS = ", single white streaks flashing in it"
DIPS = ", dipping for moments"
BAND = ", a band of white streaks lying across it"


class NoticedRow(NamedTuple):
    """What is noticed over `[start, end)` of a tape."""

    start: int
    end: int
    picture: str
    sound: str
    lock: str


@dataclass(frozen=True, slots=True)
class Playing:
    """A tape that is played. `shots` are the clips of each source.

    `worn` are places that drop out; `off`: the machine that plays it has its tracking off.
    """

    tape: Tape
    bench: Bench
    shots: Mapping[str, list[tuple[int, int, Shot]]]
    worn: Sequence[Wear] = ()
    off: bool = False

    def rows(self, start: int, end: int) -> Iterator[NoticedRow]:
        """Rows over a window of the tape; neighbours differ."""
        held: NoticedRow | None = None
        drops = [cut for each in dropping_out(self.tape, self.worn) for cut in each[:2]]
        for passage in passages(self.tape, start, end, relock=self.bench.relock, also=drops):
            row = NoticedRow(passage.start, passage.end, *self._noticed(passage))
            if held and held[2:] == row[2:]:
                held = held._replace(end=row.end)
                continue
            if held:
                yield held
            held = row
        if held:
            yield held

    def _noticed(self, passage: Passage) -> tuple[str, str, str]:
        picture, sound = passage.laid("picture"), passage.laid("sound")
        shown, heard = _shot(picture, self.shots), _shot(sound, self.shots)
        if passage.pulses is None:
            return (
                f"{shown.picture}, drifting and tearing" if picture else shown.picture,
                f"{heard.sound}, wavering" if sound else heard.sound,
                STANDS,
            )
        streaked, dipping = drops(self.tape, self.worn, passage.start)
        seen = _picture(picture, shown, passage.rolls)
        if picture:
            seen += STREAKS * streaked + BAND * self.off
        sounds = _sound(sound, heard, passage.rolls) + DIPS * dipping
        return seen, sounds, SEEKS if passage.rolls else LOCKED


def _shot(laid: Laid | None, shots: Mapping[str, list[tuple[int, int, Shot]]]) -> Shot:
    if laid is None:
        return Shot("snow", "hiss")
    for first, last, shot in shots.get(laid.source, ()):
        if first <= laid.frame < last:
            return shot
    return PASSES.get(laid.source, Shot(laid.source, laid.source))


def _picture(laid: Laid | None, shot: Shot, rolling: bool) -> str:
    if laid is None or shot is BLACK:
        return shot.picture
    if rolling:
        return f"{shot.picture}, rolling"
    return shot.picture if laid.settled else f"{shot.picture}, slipping and tearing"


def _sound(laid: Laid | None, shot: Shot, rolling: bool) -> str:
    steady = laid is None or shot is BLACK or (laid.settled and not rolling)
    return shot.sound if steady else f"{shot.sound}, wavering"


BLACK = Shot("black", "silence")

# What the passes show that were recorded before the first edit.
PASSES = {
    "black": BLACK,
    "leader": BLACK,
    "old exercise": Shot("an old exercise", "an old exercise"),
}
