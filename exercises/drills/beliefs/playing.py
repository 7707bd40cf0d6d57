"""Altered rules of playing."""

from collections.abc import Callable
from itertools import pairwise

from exercises.tape import SIDES, Bench, Side, Tape
from exercises.tape.by_hand import in_phase


def pulses_under_all(tape: Tape, bench: Bench) -> Tape:
    return pulses_under(tape, bench, lambda frame: bool(_on(tape, frame)))


def pulses_under_sound(tape: Tape, bench: Bench) -> Tape:
    """Only where sound lies alone: what it needs no pulses for, a picture still does."""
    return pulses_under(tape, bench, lambda frame: _on(tape, frame) == ["sound"])


def pulses_under(tape: Tape, bench: Bench, where: Callable[[int], bool]) -> Tape:
    """Pulses where there are none, in phase from before, so that nothing rolls there."""
    tracks = (tape.control, tape.picture, tape.sound)
    edges = {edge for track in tracks for run in track.runs for edge in (run.start, run.end)}
    for start, end in pairwise(sorted(edges)):
        if tape.control.at(start) is None and where(start):
            tape = in_phase(tape, _steady_from(tape, start, bench.relock), end)
    return tape


def _on(tape: Tape, frame: int) -> list[Side]:
    return [track for track in SIDES if tape.on(track).at(frame)]


def _steady_from(tape: Tape, frame: int, relock: int) -> int:
    """Where pulses begin that are steady at a frame; those just before it are run on."""
    start = max(0, frame - relock)
    before = [run.start for run in tape.control.runs if start <= run.end <= frame]
    return before[-1] if before else start
