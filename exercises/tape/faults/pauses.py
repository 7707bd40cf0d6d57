"""What automatic gain does to the pauses: the room comes up between the words."""

from bisect import bisect_left
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from exercises.tape.bench import Bench
from exercises.tape.faults.blame import blamed
from exercises.tape.faults.fault import Fault, FaultKind, Measured, Unit
from exercises.tape.faults.meter import RunMeter
from exercises.tape.faults.severity import graded
from exercises.tape.levels import Levels
from exercises.tape.machines import SoundMode
from exercises.tape.marks import Marks, Span
from exercises.tape.runs import Run
from exercises.tape.tape import Tape
from exercises.tape.track import Laid
from exercises.tape.work import spend

NOTICED = 10  # 0.1 dB; about the smallest change of level that is heard
STEP = 50  # 0.1 dB; so much more noise is one grade lower


class Pause(NamedTuple):
    """What is heard of a pause, in frames of the source, and the noise at its end."""

    start: int
    end: int
    noise: int


def noisy_pauses(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Pauses whose noise the gain, as it recovers, lifts beyond the limit.

    Measured by the noise at the end of the pause, over line-up.
    """
    most = meter.bench.limits.noise_floor
    for run in tape.sound.laid:
        levels, made = meter.levels(run.value), run.value.made
        automatic = made.machines.sound.mode is SoundMode.AUTOMATIC
        if levels is None or not automatic or not made.carried.marks.words:
            continue
        shift = run.start - run.value.frame
        for pause in lifted(run, levels, meter.bench):
            severity = graded(pause.noise - most - 1, STEP)
            measured = Measured(pause.noise, Unit.DECIBEL_TENTHS, most)
            for start, end, edit in blamed(tape.sound, pause.start + shift, pause.end + shift):
                yield Fault(FaultKind.NOISY_PAUSES, "sound", start, end, severity, edit, measured)


def lifted(run: Run[Laid], levels: Levels, bench: Bench) -> Iterator[Pause]:
    """The noisy pauses of a run recorded under automatic gain.

    Words and noises are at the level of the speech, everything else at the room tone's.
    The gain is at rest when the pre-roll begins, as after speech.
    """
    made, gains, floor = run.value.made, bench.automatic_gain, bench.limits.noise_floor
    first, out = run.value.frame, run.value.frame + run.end - run.start
    began = first if made.since is None else made.since
    speech, room = (level + made.machines.sound.gain for level in (levels.sound, levels.room))
    rest, most = gains.settled(speech), gains.settled(room)
    frame = float(1000 / bench.rate.fraction)
    gain = rest
    for start, end, loud in _passages(made.carried.marks, max(0, began - bench.lock), out):
        spend()
        gain = gains.toward(rest if loud else most, frame * (end - start), gain=gain)
        if loud or end <= first or gain - rest < NOTICED:
            continue
        if (noise := round(room + gain)) > floor:
            yield Pause(max(start, first), end, noise)


def _passages(marks: Marks, start: int, end: int) -> Iterator[tuple[int, int, bool]]:
    """``[start, end)`` of the source as passages in turns loud and soft; soft is False."""
    at = start
    for span in _loud(marks, start, end):
        first = span.start if span.start > at else at
        last = span.end if span.end < end else end
        if first > at:
            yield at, first, False
        if first < last:
            yield first, last, True
            at = last
    if at < end:
        yield at, end, False


def _loud(marks: Marks, start: int, end: int) -> Sequence[Span]:
    """Words and noises in order, those with a frame in ``[start, end)`` and perhaps one before."""
    words, noises = (
        spans[max(bisect_left(spans, (start,)) - 1, 0) : bisect_left(spans, (end,))]
        for spans in (marks.words, marks.noises)
    )
    return sorted((*words, *noises)) if noises else words
