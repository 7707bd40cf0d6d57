"""Levels outside their limits."""

from collections.abc import Callable, Iterator

from exercises.tape.faults.blame import blamed
from exercises.tape.faults.fault import Fault, FaultKind, Measured, Unit, joined
from exercises.tape.faults.meter import RunMeter
from exercises.tape.faults.severity import graded
from exercises.tape.tape import Tape, TrackName
from exercises.tape.track import Laid, Track

# So much further beyond the limit is one grade lower.
IRE_STEP, WEAK_STEP, LOUD_STEP = 10, 50, 30


def flat_pictures(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """White too low on the tape."""
    least = meter.bench.limits.flat_picture

    def low(laid: Laid) -> Measured | None:
        return below(meter.white(laid), Unit.IRE, least)

    return _outside(tape.picture, "picture", FaultKind.FLAT_PICTURE, low, IRE_STEP)


def clipped_pictures(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """White too high, on the tape or already on its source: no gain brings it back."""
    most = meter.bench.limits.clipped_picture

    def high(laid: Laid) -> Measured | None:
        levels = meter.levels(laid)
        source = None if levels is None else above(levels.white, Unit.IRE, most)
        return source or above(meter.white(laid), Unit.IRE, most)

    return _outside(tape.picture, "picture", FaultKind.CLIPPED_PICTURE, high, IRE_STEP)


def weak_sounds(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Speech too low on the tape, close to its hiss."""
    least = meter.bench.limits.weak_sound

    def low(laid: Laid) -> Measured | None:
        return below(meter.sound(laid), Unit.DECIBEL_TENTHS, least)

    return _outside(tape.sound, "sound", FaultKind.WEAK_SOUND, low, WEAK_STEP)


def distorted_sounds(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Speech too high, on the tape or already on its source: no gain brings it back."""
    most = meter.bench.limits.distorted_sound

    def high(laid: Laid) -> Measured | None:
        levels = meter.levels(laid)
        source = None if levels is None else above(levels.sound, Unit.DECIBEL_TENTHS, most)
        return source or above(meter.sound(laid), Unit.DECIBEL_TENTHS, most)

    return _outside(tape.sound, "sound", FaultKind.DISTORTED_SOUND, high, LOUD_STEP)


def pressed_sounds(tape: Tape, meter: RunMeter) -> Iterator[Fault]:
    """Speech that a limiter takes more off than a few dB: it holds down every word."""
    most = meter.bench.limits.limiting

    def taken(laid: Laid) -> Measured | None:
        return above(meter.limited(laid), Unit.DECIBEL_TENTHS, most)

    return _outside(tape.sound, "sound", FaultKind.PRESSED_SOUND, taken, LOUD_STEP)


def _outside(
    track: Track[Laid],
    name: TrackName,
    kind: FaultKind,
    measured: Callable[[Laid], Measured | None],
    step: int,
) -> Iterator[Fault]:
    """The runs for which ``measured`` has something to say, by the edit that laid them."""
    return joined(
        Fault(kind, name, start, end, graded(reading.beyond - 1, step), edit, reading)
        for run in track.laid
        if (reading := measured(run.value))
        for start, end, edit in blamed(track, run.start, run.end)
    )


def below(value: float | None, unit: Unit, least: int) -> Measured | None:
    if value is None or round(value) >= least:
        return None
    return Measured(round(value), unit, least)


def above(value: float | None, unit: Unit, most: int) -> Measured | None:
    if value is None or round(value) <= most:
        return None
    return Measured(round(value), unit, most)
