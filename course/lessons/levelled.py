"""Checks of claims about picture level, and about what a diagram's edits did to it."""

from typing import Any

from course.lessons.drawn import session_of
from course.lessons.lesson import Answer, Lesson
from exercises.tape import Limits, faults
from exercises.tape.levels import automatic_white, gained


def white_after(lesson: Lesson, *, white: int, decibels: int) -> Answer:
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
