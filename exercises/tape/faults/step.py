from collections.abc import Iterator
from typing import NamedTuple

from exercises.tape.bench import Bench
from exercises.tape.faults.fault import Fault, FaultKind, Measured, Unit, joined
from exercises.tape.faults.severity import Severity
from exercises.tape.limits import Limits
from exercises.tape.runs import Run
from exercises.tape.tape import Tape
from exercises.tape.track import Laid


class Offset(NamedTuple):
    """``[start, end)`` of a master, and by how many frames its sound is ahead there."""

    start: int
    end: int
    frames: int


def sound_out_of_step(tape: Tape, bench: Bench) -> Iterator[Fault]:
    """Where picture and sound that belong together lie apart (ITU-R BT.1359-1).

    Measured in ms; sound that comes early is positive. What is detectable but acceptable
    is perceptible, but not annoying; the Recommendation has no further grades, and this
    course calls what is not acceptable annoying.
    """
    return joined(_out_of_step(tape, bench))


def _out_of_step(tape: Tape, bench: Bench) -> Iterator[Fault]:
    for start, end, frames in offsets(tape):
        off = float(1000 * frames / bench.rate.fraction)
        limit, most = _limits(bench.limits, early=frames > 0)
        if abs(off) > abs(limit):
            yield Fault(
                FaultKind.SOUND_OUT_OF_STEP,
                "sound",
                start,
                end,
                Severity.ANNOYING if abs(off) > abs(most) else Severity.PERCEPTIBLE,
                _blamed(tape, start),
                Measured(round(off), Unit.MILLISECONDS, limit),
            )


def _limits(limits: Limits, *, early: bool) -> tuple[int, int]:
    """What is detectable and what is no longer acceptable, in ms."""
    if early:
        return limits.sound_early, limits.sound_early_most
    return -limits.sound_late, -limits.sound_late_most


def offsets(tape: Tape) -> Iterator[Offset]:
    """Where picture and sound of one take, belonging together, are not in step."""
    pictures, sounds = iter(tape.picture.laid), iter(tape.sound.laid)
    picture, sound = next(pictures, None), next(sounds, None)
    while picture is not None and sound is not None:
        start, end = max(picture.start, sound.start), min(picture.end, sound.end)
        if start < end and (frames := _ahead(picture, sound)):
            yield Offset(start, end, frames)
        if picture.end <= sound.end:
            picture = next(pictures, None)
        else:
            sound = next(sounds, None)


def _ahead(picture: Run[Laid], sound: Run[Laid]) -> int:
    """By how many frames the sound is ahead of the picture it belongs to; else 0."""
    shown, heard = picture.value, sound.value
    together = shown.made.together
    if together is None or together != heard.made.together or shown.source != heard.source:
        return 0
    return heard.frame - sound.start - (shown.frame - picture.start)


def _blamed(tape: Tape, frame: int) -> int | None:
    """The later of the edits that laid the two."""
    edits = (tape.picture.cause(frame), tape.sound.cause(frame))
    return max((edit for edit in edits if edit is not None), default=None)
