"""What is seen and heard while a tape is played, row by row, and never why."""

from collections.abc import Iterator, Mapping
from itertools import pairwise
from typing import NamedTuple

from exercises.drills.quay_street import Shot
from exercises.drills.wants import SIDES, side
from exercises.tape import Bench, Laid, Run, Tape

# A machine without pulses can't lock and its counter, which counts pulses, stands still.
# Common practice.
STANDS = "Servo not locked, counter standing still"
SEEKS = "Servo not locked"
LOCKED = "Servo locked"


class Row(NamedTuple):
    """What is noticed over `[start, end)` of a tape."""

    start: int
    end: int
    picture: str
    sound: str
    lock: str


def rows(
    tape: Tape, bench: Bench, start: int, end: int, shots: Mapping[str, list[tuple[int, int, Shot]]]
) -> Iterator[Row]:
    """Rows over a window of the tape; neighbours differ. `shots` are the clips of each source."""
    held: Row | None = None
    for first, last in pairwise(_cuts(tape, bench, start, end)):
        row = Row(first, last, *_noticed(tape, bench, first, shots))
        if held and held[2:] == row[2:]:
            held = held._replace(end=row.end)
            continue
        if held:
            yield held
        held = row
    if held:
        yield held


def _cuts(tape: Tape, bench: Bench, start: int, end: int) -> list[int]:
    cuts = {start, end}
    for pulses in tape.control.runs:
        cuts.update((pulses.start, min(pulses.start + bench.relock, pulses.end), pulses.end))
    for track in SIDES:
        for laid in side(tape, track).runs:
            cuts.update((laid.start, laid.end))
    return sorted(cut for cut in cuts if start <= cut <= end)


def _noticed(
    tape: Tape, bench: Bench, frame: int, shots: Mapping[str, list[tuple[int, int, Shot]]]
) -> tuple[str, str, str]:
    pulses = tape.control.at(frame)
    if pulses is None:
        return "snow", "hiss", STANDS
    rolling = frame < pulses.start + bench.relock
    picture, sound = tape.picture.at(frame), tape.sound.at(frame)
    return (
        _picture(picture, _shot(picture, frame, shots), rolling),
        _sound(sound, _shot(sound, frame, shots), rolling),
        SEEKS if rolling else LOCKED,
    )


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
