"""What is wrong with a recorded tape beyond how it plays: one module a family of faults.

Every fault says where it is, how bad it is in the words of ITU-R BT.500, which edit
caused it, and the measurement behind it; the bench's Limits say what is still no fault.
"""

from collections.abc import Iterator
from itertools import chain

from exercises.tape.bench import Bench
from exercises.tape.faults.adjustment import bent_verticals, noise_bands, recorder_off_position
from exercises.tape.faults.fault import Fault, FaultKind, Measured, Unit
from exercises.tape.faults.flashes import flash_frames
from exercises.tape.faults.generations import too_many_generations
from exercises.tape.faults.jumps import mixed_recorders, picture_jumps, sound_jumps
from exercises.tape.faults.levels import (
    clipped_pictures,
    distorted_sounds,
    flat_pictures,
    pressed_sounds,
    weak_sounds,
)
from exercises.tape.faults.meter import RunMeter
from exercises.tape.faults.pauses import noisy_pauses
from exercises.tape.faults.severity import Severity
from exercises.tape.faults.step import sound_out_of_step
from exercises.tape.faults.words import cut_words, stray_breaths
from exercises.tape.tape import Tape
from exercises.tape.work import spend

__all__ = ["Fault", "FaultKind", "Measured", "Severity", "Unit", "faults"]

ORDER = {kind: number for number, kind in enumerate(FaultKind)}
RUN = 8  # steps of work to find what is wrong with one
CONTENT = (flash_frames, cut_words, stray_breaths, sound_out_of_step)
METERED = (
    picture_jumps,
    sound_jumps,
    flat_pictures,
    clipped_pictures,
    weak_sounds,
    distorted_sounds,
    pressed_sounds,
    noisy_pauses,
    noise_bands,
    bent_verticals,
    mixed_recorders,
    recorder_off_position,
    too_many_generations,
)


def faults(tape: Tape, bench: Bench) -> tuple[Fault, ...]:
    """The faults of a tape beyond its states, in the order in which they are met."""
    spend(RUN * sum(len(track.laid) for track in (tape.control, tape.picture, tape.sound)))
    return tuple(sorted(_found(tape, bench), key=_place))


def _found(tape: Tape, bench: Bench) -> Iterator[Fault]:
    meter = RunMeter(bench)
    return chain(
        chain.from_iterable(find(tape, bench) for find in CONTENT),
        chain.from_iterable(find(tape, meter) for find in METERED),
    )


def _place(fault: Fault) -> tuple[int, int, int]:
    return fault.start, fault.end, ORDER[fault.kind]
