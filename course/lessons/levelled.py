"""Checks of claims about levels: what a recorder does to them, and where they are a fault."""

from typing import Any

import numpy as np

from course.lessons.drawn import session_of
from course.lessons.lesson import Answer, Lesson
from exercises.signal.lines import Lines
from exercises.signal.meters import peak, vu
from exercises.signal.meters.scale import in_words
from exercises.signal.patterns.bars import BARS, USUAL, numbers
from exercises.signal.sound.samples import RATE
from exercises.signal.sound.tones import line_up_tone
from exercises.tape import Bench, Limits, Rate, faults
from exercises.tape.levels import REACH, automatic_white, gained, looped


def white_after(lesson: Lesson, *, white: int, decibels: float) -> Answer:
    """IRE of a white after the picture level was turned by so many dB."""
    return f"{gained(white, 10 * decibels):.0f} IRE"


def automatic_white_of(lesson: Lesson, *, white: int) -> Answer:
    """IRE that automatic picture level makes of a white."""
    return f"{automatic_white(white):.0f} IRE"


def faults_from(lesson: Lesson, *, kind: str, **at: Any) -> Answer:
    """How many faults of a kind, beyond how it plays, the tape of a diagram has."""
    session = session_of(lesson, **at)
    return sum(fault.kind == kind for fault in faults(session.recorded(), session.bench))


def limit(lesson: Lesson, *, figure: str, unit: str) -> Answer:
    """Where a disturbance begins to be a fault: see `exercises.tape.Limits`."""
    return f"{getattr(Limits(), figure)} {unit}"


def limit_in_tenths(lesson: Lesson, *, figure: str, unit: str) -> Answer:
    """The same of those that are kept in tenths of their unit: “3 dB”, “1 µs”."""
    return f"{getattr(Limits(), figure) / 10:g} {unit}"


def vu_limit(lesson: Lesson, *, figure: str) -> Answer:
    """The same of a sound level, as a VU meter reads it: “+3 VU”."""
    return in_words(getattr(Limits(), figure))


def vu_burst(lesson: Lesson, *, milliseconds: int) -> Answer:
    """By how many whole dB a VU meter reads a burst of line-up tone too low."""
    burst = line_up_tone().read(0, milliseconds * RATE // 1000)
    return -round(vu.peak(np.pad(burst, (0, RATE))) / 10)


def peak_burst(lesson: Lesson, *, milliseconds: int) -> Answer:
    """By how many whole dB a peak meter reads a burst of line-up tone too low."""
    burst = line_up_tone().read(0, milliseconds * RATE // 1000)
    return f"{-round(peak.highest(burst) / 10)} dB"


def peak_maximum(lesson: Lesson) -> Answer:
    """How far a peak meter’s permitted maximum lies over line-up tone."""
    return f"{peak.HEADROOM / 10:g} dB"


def looped_level(lesson: Lesson, *, ends: int) -> Answer:
    """By how much a looped line with so many ends of 75 Ω is off: “6 dB”."""
    return f"{abs(round(looped(ends) / 10, 1)):g} dB"


def bar_level(lesson: Lesson, *, bars: str, bar: str, lines: int) -> Answer:
    """Where a bar of a pattern of colour bars stands: in IRE at 525 lines, in mV at 625."""
    system = Lines(lines)
    ire = next(each.ire(system) for each in BARS[bars] if each.name == bar)
    return f"{ire:.1f} IRE" if system is Lines.L525 else f"{ire * system.millivolts:.0f} mV"


def usual_bars(lesson: Lesson, *, lines: int) -> Answer:
    """The figures of the bars that are usual at so many lines."""
    system = Lines(lines)
    return numbers(USUAL[system], system)


def automatic_reach(lesson: Lesson) -> Answer:
    """How far automatic picture level goes, either way."""
    return f"{REACH / 10:g} dB"


def limited(lesson: Lesson, *, level: float) -> Answer:
    """Where the limiter leaves a level, in dB over line-up."""
    return f"{_bench().limiter.out(10 * level) / 10:+g}".replace("-", "−")


def automatic_gain(lesson: Lesson, *, level: float) -> Answer:
    """The gain that automatic gain comes to rest at for a level, in whole dB."""
    return round(_bench().automatic_gain.settled(10 * level) / 10)


def pause_gain(lesson: Lesson, *, seconds: float) -> Answer:
    """How far automatic gain has come up after so long a pause, in whole dB."""
    gains = _bench().automatic_gain
    return round(gains.toward(gains.most, 1000 * seconds, gain=0) / 10)


def _bench() -> Bench:
    return Bench.default(Rate.R25)
