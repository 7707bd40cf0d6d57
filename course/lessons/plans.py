"""Checks of claims about a plan: when it ends, how long it takes at the bench."""

from itertools import pairwise
from typing import Any

from course.lessons.drawn import session_of
from course.lessons.figures import duration
from course.lessons.lesson import Answer, Lesson
from exercises.tape import Edit, EditSession, Pace, Rate, frame_of, label
from exercises.tape.judging.economy import economy


def running_time(lesson: Lesson, *, edit: int = 0, last: int | None = None, **at: Any) -> Answer:
    """The length of a diagram's edits together, from one of them, by index, to the last."""
    session = session_of(lesson, **at)
    frames = sum(made.out - made.in_ for made in _some(session, edit, last))
    return duration(frames, session.bench.rate)


def ends_at(lesson: Lesson, *, edit: int, **at: Any) -> Answer:
    """The time code of an edit out on the edit master."""
    session = session_of(lesson, **at)
    return label(session.edits[edit].end, session.bench.rate)


def first_edit_in(lesson: Lesson, *, source: str, take: int, **at: Any) -> Answer:
    """The time code of the first good edit in of a take: a run-up after its first frame."""
    session = session_of(lesson, **at)
    start = session.sources[source].takes[take].start
    return label(start + session.bench.lock, session.bench.rate)


def usable_length(lesson: Lesson, *, source: str, take: int, **at: Any) -> Answer:
    """How much of a take lies behind its run-up."""
    session = session_of(lesson, **at)
    held = session.sources[source].takes[take]
    return duration(held.end - held.start - session.bench.lock, session.bench.rate)


def bench_minutes(
    lesson: Lesson, *, order: list[int] | None = None, edit: int = 0, **at: Any
) -> Answer:
    """Minutes at the bench for a diagram's edits, in another order if told.

    From `edit` on, by index; both tapes wound to their start before it.
    """
    session = session_of(lesson, **at)
    made = [session.edits[n] for n in order] if order else _some(session, edit, None)
    rate = session.bench.rate
    spent = economy(made, Pace.default(rate), generations=0, tape=0)
    return f"{spent.minutes(rate)} minutes"


def tape_changes(lesson: Lesson, *, order: list[int] | None = None, **at: Any) -> Answer:
    """How often another source tape goes into the player."""
    session = session_of(lesson, **at)
    made = [session.edits[n] for n in order] if order else list(session.edits)
    return sum(one.source != next_.source for one, next_ in pairwise(made))


def pace(lesson: Lesson, *, figure: str) -> Answer:
    """What the work at the bench takes beside recording: see `exercises.tape.Pace`."""
    frames: int = getattr(Pace.default(Rate.R25), figure)
    return duration(frames, Rate.R25)


def labels_left_out(lesson: Lesson, *, begins: str, ends: str) -> Answer:
    """How many labels drop-frame code leaves out between two of its labels."""
    counted = [frame_of(code.replace(";", ":"), Rate.R29_97) for code in (begins, ends)]
    held = [frame_of(code, Rate.R29_97) for code in (begins, ends)]
    return (counted[1] - counted[0]) - (held[1] - held[0])


def behind_the_clock(lesson: Lesson, *, code: str) -> Answer:
    """How far 29.97 code without drop-frame lags behind a clock when it shows `code`."""
    shown = frame_of(code, Rate.R29_97)
    lag = shown / Rate.R29_97.fraction - shown // Rate.R29_97.nominal
    return f"{float(lag):.1f} seconds"


def _some(session: EditSession, first: int, last: int | None) -> list[Edit]:
    return list(session.edits[first : None if last is None else last + 1])
