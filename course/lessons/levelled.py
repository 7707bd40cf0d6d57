"""Checks of claims about picture level, sound level, and what a recorder does to them."""

from course.lessons.lesson import Answer, Lesson
from exercises.signal.lines import Lines
from exercises.signal.meters.scale import in_words
from exercises.signal.patterns.bars import BARS
from exercises.tape import Bench, Rate
from exercises.tape.faults.fault import Unit
from exercises.tape.faults.wording import amount
from exercises.tape.levels import REACH, automatic_white, gained
from exercises.tape.limits import LIMITS

UNITS = {
    "skew": Unit.MICROSECOND_TENTHS,
    "picture_step": Unit.IRE,
    "flat_picture": Unit.IRE,
    "clipped_picture": Unit.IRE,
}


def limit(lesson: Lesson, *, limit: str) -> Answer:
    """The last value that is still no fault: “10 IRE”, “3 dB”."""
    return amount(getattr(LIMITS, limit), UNITS.get(limit, Unit.DECIBEL_TENTHS)).replace("-", "−")


def vu_limit(lesson: Lesson, *, limit: str) -> Answer:
    """The same of a sound level, as a VU meter reads it: “+3 VU”."""
    return in_words(getattr(LIMITS, limit))


def bar_level(lesson: Lesson, *, bar: str, lines: int) -> Answer:
    """Where a bar of the 75 % colour bars stands: in IRE at 525 lines, in mV at 625."""
    system = Lines(lines)
    ire = next(each.ire(system) for each in BARS if each.name == bar)
    return f"{ire:.1f} IRE" if system is Lines.L525 else f"{ire * system.millivolts:.0f} mV"


def gained_white(lesson: Lesson, *, white: float, gain: float) -> Answer:
    """Where a white stands after a gain in dB, in whole IRE."""
    return round(gained(white, 10 * gain))


def automatic_reach(lesson: Lesson) -> Answer:
    """How far automatic picture level goes, either way."""
    return amount(REACH, Unit.DECIBEL_TENTHS)


def automatic_picture(lesson: Lesson, *, white: float) -> Answer:
    """Where automatic picture level puts a white, in whole IRE."""
    return round(automatic_white(white))


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
