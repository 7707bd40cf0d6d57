"""Checks of claims about which mode is right: every mode is tried on the tape model."""

from typing import Any

from course.lessons.drawn import session_of
from course.lessons.lesson import Answer, Lesson
from course.lessons.plays import Content, plays
from course.lessons.showing import after
from exercises.tape import SIDES, Assemble, Bench, Edit, Insert, Side, Tape, record


def right_modes(
    lesson: Lesson, *, edit: int, change: list[str], keep_behind: bool, **at: Any
) -> Answer:
    """The modes that make an edit, by index, so that all that is wanted plays cleanly.

    Wanted are the new frames on the tracks to `change`, and all that played cleanly
    before: on the other track, before the edit in, and, if `keep_behind`, behind it.
    """
    session = session_of(lesson, **at)
    tape, made = after(session, edit).recorded(), session.edits[edit]
    wanted = {track: plays(tape, session.bench, track) for track in SIDES}
    for track in SIDES:
        if not keep_behind:
            wanted[track][made.at :] = [None] * (tape.length - made.at)
        if track in change:
            new = [(made.source.name, frame) for frame in range(made.in_, made.out)]
            wanted[track][made.at : made.end] = new
    right = [
        name
        for name, tried in _modes(made).items()
        if _gives(record(tape, tried, session.bench), session.bench, wanted)
    ]
    return ", ".join(right) or "none"


def _modes(edit: Edit) -> dict[str, Edit]:
    """The edit in each of the modes of the bench."""
    shot = (edit.source, edit.in_, edit.out, edit.at)
    return {
        "assemble": Assemble(*shot),
        "insert picture": Insert(*shot, picture=True, sound=False),
        "insert sound": Insert(*shot, picture=False, sound=True),
        "insert picture and sound": Insert(*shot, picture=True, sound=True),
    }


def _gives(tape: Tape, bench: Bench, wanted: dict[Side, list[Content]]) -> bool:
    return all(
        want is None or want == got
        for track, wants in wanted.items()
        for want, got in zip(wants, plays(tape, bench, track), strict=True)
    )
