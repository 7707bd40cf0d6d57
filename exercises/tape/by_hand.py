"""Laying runs by hand, as no machine does: for beliefs, and for a tape as it is wanted."""

from collections.abc import Sequence

from exercises.tape.runs import Run
from exercises.tape.tape import SIDES, Side, Tape
from exercises.tape.track import PULSES, Laid


def with_runs(
    tape: Tape, tracks: Sequence[Side], start: int, end: int, runs: list[Run[Laid]]
) -> Tape:
    """The tape with `[start, end)` of some tracks holding these runs and nothing else."""
    picture, sound = (
        tape.on(track).over(start, end, runs, cause=None) if track in tracks else tape.on(track)
        for track in SIDES
    )
    return Tape(tape.length, tape.control, picture, sound)


def in_phase(tape: Tape, start: int, end: int) -> Tape:
    """The tape with pulses in phase over all of `[start, end)`."""
    control = tape.control.over(start, end, [Run(start, end, PULSES)], cause=None)
    return Tape(tape.length, control, tape.picture, tape.sound)
