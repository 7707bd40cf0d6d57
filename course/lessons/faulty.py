"""Checks of claims about the faults that a diagram of the lesson marks."""

from collections.abc import Iterator
from typing import Any

from course.lessons.drawn import session_of
from course.lessons.figures import duration
from course.lessons.lesson import Answer, Lesson
from exercises.tape import Fault, FaultKind, faults
from exercises.tape.faults.wording import amount


def fault_kinds(lesson: Lesson, **at: Any) -> Answer:
    """The kinds of all faults of a diagram, each once, in the order in which they are met."""
    session = session_of(lesson, **at)
    found = dict.fromkeys(each.kind for each in faults(session.recorded(), session.bench))
    return ", ".join(found) or "none"


def fault_length(lesson: Lesson, *, fault: str, **at: Any) -> Answer:
    """How much tape a kind of fault is on, all its stretches together."""
    length = sum(each.end - each.start for each in _found(lesson, fault, at))
    return duration(length, session_of(lesson, **at).bench.rate)


def fault_after(lesson: Lesson, *, fault: str, edit: int, **at: Any) -> Answer:
    """How long after the edit in of an edit, by index, its first fault of a kind begins."""
    session = session_of(lesson, **at)
    first = _first(lesson, fault, edit, at)
    return duration(first.start - session.edits[edit].at, session.bench.rate)


def fault_measured(lesson: Lesson, *, fault: str, edit: int, **at: Any) -> Answer:
    """What was measured of an edit's first fault of a kind, without its sign: “15 IRE”."""
    found = _first(lesson, fault, edit, at)
    return amount(abs(found.measured.value), found.measured.unit)


def _found(lesson: Lesson, fault: str, at: dict[str, Any]) -> Iterator[Fault]:
    session, kind = session_of(lesson, **at), FaultKind(fault)
    return (each for each in faults(session.recorded(), session.bench) if each.kind is kind)


def _first(lesson: Lesson, fault: str, edit: int, at: dict[str, Any]) -> Fault:
    for each in _found(lesson, fault, at):
        if each.edit == edit:
            return each
    raise LookupError(f"edit {edit} makes no {fault}")
