"""What is seen and heard while a tape is played, row by row, and never why."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

from exercises.drills.kinds.spot_the_bad_edit.wear import Wear, dropping_out, drops
from exercises.drills.setting.quay_street import Shot
from exercises.tape import SIDES, Bench, Laid, Run, Tape

# A machine without pulses can't lock and its counter, which counts pulses, stands still.
# Common practice.
STANDS = "Servo not locked, counter standing still"
SEEKS = "Servo not locked"
LOCKED = "Servo locked"

# What a place that is worn does, and what tracking does that is off (common practice).
STREAKS = ", single white streaks flashing in it"
DIPS = ", dipping for moments"
BAND = ", a band of white streaks lying across it"


class Row(NamedTuple):
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

    def rows(self, start: int, end: int) -> Iterator[Row]:
        """Rows over a window of the tape; neighbours differ."""
        held: Row | None = None
        for first, last in pairwise(self._cuts(start, end)):
            row = Row(first, last, *self._noticed(first))
            if held and held[2:] == row[2:]:
                held = held._replace(end=row.end)
                continue
            if held:
                yield held
            held = row
        if held:
            yield held

    def _cuts(self, start: int, end: int) -> list[int]:
        cuts = {start, end}
        for pulses in self.tape.control.runs:
            steady = min(pulses.start + self.bench.relock, pulses.end)
            cuts.update((pulses.start, steady, pulses.end))
        for track in SIDES:
            for laid in self.tape.on(track).runs:
                cuts.update((laid.start, laid.end))
        for first, last, _ in dropping_out(self.tape, self.worn):
            cuts.update((first, last))
        return sorted(cut for cut in cuts if start <= cut <= end)

    def _noticed(self, frame: int) -> tuple[str, str, str]:
        pulses = self.tape.control.at(frame)
        picture, sound = self.tape.picture.at(frame), self.tape.sound.at(frame)
        if pulses is None:
            seen = _shot(picture, frame, self.shots).picture
            heard = _shot(sound, frame, self.shots).sound
            return (
                f"{seen}, drifting and tearing" if picture else seen,
                f"{heard}, wavering" if sound else heard,
                STANDS,
            )
        rolling = frame < pulses.start + self.bench.relock
        seen = _picture(picture, _shot(picture, frame, self.shots), rolling)
        heard = _sound(sound, _shot(sound, frame, self.shots), rolling)
        streaked, dipping = drops(self.tape, self.worn, frame)
        if picture:
            seen += STREAKS * streaked + BAND * self.off
        return seen, heard + DIPS * dipping, SEEKS if rolling else LOCKED


def _shot(
    run: Run[Laid] | None, frame: int, shots: Mapping[str, list[tuple[int, int, Shot]]]
) -> Shot:
    if run is None:
        return Shot("snow", "hiss")
    value = run.tail(frame).value
    for first, last, shot in shots.get(value.source, ()):
        if first <= value.frame < last:
            return shot
    return PASSES.get(value.source, Shot(value.source, value.source))


def _picture(run: Run[Laid] | None, shot: Shot, rolling: bool) -> str:
    if run is None:
        return shot.picture
    if shot is BLACK:
        return shot.picture
    if rolling:
        return f"{shot.picture}, rolling"
    return shot.picture if run.value.settled else f"{shot.picture}, slipping and tearing"


def _sound(run: Run[Laid] | None, shot: Shot, rolling: bool) -> str:
    steady = run is None or shot is BLACK or (run.value.settled and not rolling)
    return shot.sound if steady else f"{shot.sound}, wavering"


BLACK = Shot("black", "silence")

# What the passes show that were recorded before the first edit.
PASSES = {
    "black": BLACK,
    "leader": BLACK,
    "old exercise": Shot("an old exercise", "an old exercise"),
}
