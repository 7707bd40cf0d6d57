"""What jumps where one recording meets another: the levels, or the machine they come from."""

from collections.abc import Callable, Iterator
from itertools import pairwise

from exercises.tape.faults.blame import cutter
from exercises.tape.faults.fault import Fault, FaultKind, Measured, Unit
from exercises.tape.faults.meter import RunMeter
from exercises.tape.faults.severity import Severity, graded
from exercises.tape.runs import Run
from exercises.tape.tape import Tape
from exercises.tape.track import Laid, Track

# So much further beyond the limit is one grade lower.
IRE_STEP, SOUND_STEP = 10, 30


def picture_jumps(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Steps between the whites of neighbours."""
    most = meter.bench.limits.picture_step
    for frame, step in _steps(tape.picture, meter.white, most):
        yield Fault(
            FaultKind.PICTURE_LEVEL_JUMP,
            "picture",
            frame,
            frame + 1,
            graded(step - most - 1, IRE_STEP),
            cutter(tape.picture, frame),
            Measured(step, Unit.IRE, most),
        )


def sound_jumps(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Steps between the levels at which the speech of neighbours is heard."""
    most = meter.bench.limits.sound_step
    for frame, step in _steps(tape.sound, meter.sound, most):
        yield Fault(
            FaultKind.SOUND_LEVEL_JUMP,
            "sound",
            frame,
            frame + 1,
            graded(step - most - 1, SOUND_STEP),
            cutter(tape.sound, frame),
            Measured(step, Unit.DECIBEL_TENTHS, most),
        )


def mixed_recorders(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Neighbouring pictures from two recorders: no two lay their tracks quite alike.

    A player tracks one of them well, so the picture is disturbed at the cut.
    """
    most = meter.bench.limits.recorders
    for before, after in _meetings(tape.picture) if most < 2 else ():
        if before.value.made.machines.recorder.name != after.value.made.machines.recorder.name:
            yield Fault(
                FaultKind.MIXED_RECORDERS,
                "picture",
                after.start,
                after.start + 1,
                Severity.ANNOYING,
                cutter(tape.picture, after.start),
                Measured(2, Unit.RECORDERS, most),
            )


def _meetings(track: Track[Laid]) -> Iterator[tuple[Run[Laid], Run[Laid]]]:
    """Neighbours that touch and were not made alike."""
    for before, after in pairwise(track.laid):
        if before.end == after.start and before.value.made is not after.value.made:
            yield before, after


def _steps(
    track: Track[Laid], level: Callable[[Laid], float | None], most: int
) -> Iterator[tuple[int, int]]:
    """Where the level of neighbours differs by more than `most`, and by how much."""
    for before, after in _meetings(track):
        old, new = level(before.value), level(after.value)
        step = 0 if old is None or new is None else round(abs(new - old))
        if step > most:
            yield after.start, step
