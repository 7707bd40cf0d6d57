"""Checks of claims about a machine's adjustment: tracking, skew, clean heads."""

import re
from math import e, log10, pi

from course.lessons.lesson import Answer, Lesson
from exercises.drills.kinds.set_tracking.meter import TrackingMeter, in_words
from exercises.drills.kinds.set_tracking.seen import seen
from exercises.signal.displays.monitor import OVERSCAN
from exercises.signal.lines import Lines
from exercises.tape.geometry import envelope_loss


def tracking_loss(lesson: Lesson, *, percent: float) -> Answer:
    """How far the heads' signal is down at a tracking error in percent of a stripe."""
    return f"{envelope_loss(percent) / 10:.1f} dB"


def tracking_shows(lesson: Lesson, *, percent: int) -> Answer:
    """What a monitor shows at a tracking error, in the words of the drills."""
    return seen(percent)


def tracking_streaks(lesson: Lesson, *, percent: int) -> Answer:
    """In which third of the picture most of the streaks are; “none” without any."""
    found = re.search(r"white streaks on .*?in the (\w+ third)", seen(percent), re.IGNORECASE)
    return found[1] if found else "none"


def meter_reads(lesson: Lesson, *, top: float, percent: int) -> Answer:
    """What a tracking meter that peaks at `top` reads at a tracking error."""
    return in_words(TrackingMeter(top=round(10 * top)).at(percent))


def skew_step(lesson: Lesson, *, parts: int, lines: int) -> Answer:
    """The step where the heads change over, on a tape stretched by one part in so many."""
    return f"{1000 * Lines(lines).field / parts:.1f} µs"


def skew_width(lesson: Lesson, *, microseconds: float, lines: int) -> Answer:
    """How many times a step goes into the width of the picture."""
    return round(Lines(lines).active / microseconds)


def spacing_loss(lesson: Lesson, *, micrometres: float, speed: float, megahertz: float) -> Answer:
    """What dirt so thick takes off the signal: 54.6 dB a wavelength (Wallace, 1951).

    `speed` is that of the heads along the tape, in metres a second.
    """
    return f"{round(40 * pi * log10(e) * micrometres * megahertz / speed)} dB"


def hidden_edge(lesson: Lesson) -> Answer:
    """The part of the picture that a monitor hides at each edge: one in so many."""
    return round(1 / OVERSCAN)
