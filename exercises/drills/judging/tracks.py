"""Laying runs by hand, as no machine does: for beliefs, and for a tape as it is wanted."""

from collections.abc import Sequence
from typing import TypeVar

from exercises.drills.judging.wants import SIDES, Side, side
from exercises.tape import Laid, Pulses, Run, Tape, Track

V = TypeVar("V", Laid, Pulses)

PULSES = Pulses()


def stretch(track: Track[V], start: int, end: int) -> list[Run[V]]:
    """What a track holds in `[start, end)`."""
    return [
        run.tail(start)._replace(end=min(run.end, end))
        for run in track.runs
        if run.end > start and run.start < end
    ]


def inside(track: Track[V], frame: int) -> bool:
    """Whether one shot runs on across a frame's start."""
    shot = track.at(frame)
    return shot is not None and shot.start < frame


def with_runs(
    tape: Tape, tracks: Sequence[Side], start: int, end: int, runs: list[Run[Laid]]
) -> Tape:
    """The tape with `[start, end)` of some tracks holding these runs and nothing else."""
    picture, sound = (
        side(tape, track).over(start, end, runs, cause=None)
        if track in tracks
        else side(tape, track)
        for track in SIDES
    )
    return Tape(tape.length, tape.control, picture, sound)


def in_phase(tape: Tape, start: int, end: int) -> Tape:
    """The tape with pulses in phase over all of `[start, end)`."""
    control = tape.control.over(start, end, [Run(start, end, PULSES)], cause=None)
    return Tape(tape.length, control, tape.picture, tape.sound)
