"""A fault beyond the states of playback: what it is, where, how bad, whose, and how measured."""

from collections.abc import Iterable, Iterator
from enum import StrEnum
from typing import NamedTuple

from exercises.tape.faults.severity import Severity
from exercises.tape.tape import TrackName


class FaultKind(StrEnum):
    FLASH_FRAMES = "flash-frames"
    CLIPPED_WORD = "clipped-word"
    STRAY_BREATH = "stray-breath"
    PICTURE_LEVEL_JUMP = "picture-level-jump"
    SOUND_LEVEL_JUMP = "sound-level-jump"
    FLAT_PICTURE = "flat-picture"
    CLIPPED_PICTURE = "clipped-picture"
    WEAK_SOUND = "weak-sound"
    DISTORTED_SOUND = "distorted-sound"
    PRESSED_SOUND = "pressed-sound"
    NOISY_PAUSES = "noisy-pauses"
    NOISE_BAND = "noise-band"
    BENT_VERTICALS = "bent-verticals"
    MIXED_RECORDERS = "mixed-recorders"
    RECORDER_OFF_POSITION = "recorder-off-position"
    TOO_MANY_GENERATIONS = "too-many-generations"
    SOUND_OUT_OF_STEP = "sound-out-of-step"


class Unit(StrEnum):
    FRAMES = "frames"
    IRE = "IRE"
    DECIBEL_TENTHS = "0.1 dB"
    PERCENT = "% of a track"
    MICROSECOND_TENTHS = "0.1 µs"
    MILLISECONDS = "ms"
    RECORDERS = "recorders"


class Measured(NamedTuple):
    """A whole number of ``unit``, and the limit that it is beyond."""

    value: int
    unit: Unit
    limit: int

    @property
    def beyond(self) -> int:
        return abs(self.value - self.limit)


class Fault(NamedTuple):
    """``[start, end)`` of a track; at a cut it is the first frame after it.

    ``edit`` is the index of the edit that caused it; None where none did.
    """

    kind: FaultKind
    track: TrackName
    start: int
    end: int
    severity: Severity
    edit: int | None
    measured: Measured


def joined(faults: Iterable[Fault]) -> Iterator[Fault]:
    """Faults of one kind and track, in order; neighbours of one edit as one, with its worst."""
    held: Fault | None = None
    for fault in faults:
        if held is not None and held.end == fault.start and held.edit == fault.edit:
            worst = max(held, fault, key=lambda each: each.measured.beyond)
            held = worst._replace(start=held.start, end=fault.end)
            continue
        if held is not None:
            yield held
        held = fault
    if held is not None:
        yield held
