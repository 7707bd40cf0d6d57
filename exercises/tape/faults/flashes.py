from collections.abc import Iterator
from itertools import pairwise

from exercises.tape.bench import Bench
from exercises.tape.faults.blame import latest
from exercises.tape.faults.fault import Fault, FaultKind, Measured, Unit
from exercises.tape.faults.severity import Severity, graded
from exercises.tape.faults.stretches import UncutStretch, stretches
from exercises.tape.tape import Tape


def flash_frames(tape: Tape, bench: Bench) -> Iterator[Fault]:
    """Pictures, or blank tape, between two shots and too short to be one.

    The measurement is how many frames there are; the limit is how many are still a flash.
    """
    most = bench.limits.flash_frames
    for start, end in _short(stretches(tape.picture.laid), most):
        frames = end - start
        yield Fault(
            FaultKind.FLASH_FRAMES,
            "picture",
            start,
            end,
            graded(frames - 1, 1, best=Severity.SLIGHTLY_ANNOYING),
            latest(tape.picture, start - 1, start, end),
            Measured(frames, Unit.FRAMES, most),
        )


def _short(shots: list[UncutStretch], most: int) -> Iterator[tuple[int, int]]:
    close = True  # whether something lies just before the stretch; nothing is before the first
    for number, (shot, after) in enumerate(pairwise(shots)):
        gap = after.start - shot.end
        if number and close and gap <= most and shot.end - shot.start <= most:
            yield shot.start, shot.end
        if 0 < gap <= most:
            yield shot.end, after.start
        close = gap <= most
