"""Altered rules of playing."""

from collections.abc import Callable

from exercises.tape import Bench, Passage, Tape, passages
from exercises.tape.by_hand import in_phase


def pulses_under_all(tape: Tape, bench: Bench) -> Tape:
    return pulses_under(tape, bench, lambda passage: bool(passage.picture or passage.sound))


def pulses_under_sound(tape: Tape, bench: Bench) -> Tape:
    """Only where sound lies alone: what it needs no pulses for, a picture still does."""
    return pulses_under(tape, bench, lambda passage: bool(passage.sound and not passage.picture))


def pulses_under(tape: Tape, bench: Bench, where: Callable[[Passage], bool]) -> Tape:
    """Pulses where there are none, in phase from before, so that nothing rolls there."""
    for passage in passages(tape, relock=0):
        if where(passage) and tape.control.at(passage.start) is None:
            tape = in_phase(tape, _steady_from(tape, passage.start, bench.relock), passage.end)
    return tape


def _steady_from(tape: Tape, frame: int, relock: int) -> int:
    """Where pulses begin that are steady at a frame; those just before it are run on."""
    start = max(0, frame - relock)
    before = [run.start for run in tape.control.runs if start <= run.end <= frame]
    return before[-1] if before else start
