"""Checks of claims about what a diagram of the lesson shows."""

from typing import Any

from course.lessons.figures import duration
from course.lessons.lesson import Answer, Lesson
from course.lessons.plays import plays, side_named
from course.lessons.showing import after
from exercises.tape import EditSession, Tape, Track


def session_of(lesson: Lesson, *, diagram: str, edits: int | None = None) -> EditSession:
    """The session of a diagram of the lesson, with its first `edits` only, if told."""
    session = lesson.diagrams()[diagram].session
    return session if edits is None else after(session, edits)


def state_length(
    lesson: Lesson,
    *,
    state: str,
    edit: int | None = None,
    within: list[int] | None = None,
    **at: Any,
) -> Answer:
    """How long a state lasts, all its stretches together.

    With `edit`, only where that edit, by index, has caused it; with `within`, only the
    stretches that lie between two frames.
    """
    session = session_of(lesson, **at)
    first, last = within or (0, session.master.length)
    stretches = [
        min(each.end, last) - max(each.start, first)
        for each in session.played()
        if each.state == state and (edit is None or each.edit == edit)
    ]
    return duration(sum(length for length in stretches if length > 0), session.bench.rate)


def all_clean(lesson: Lesson, *, within: list[int], **at: Any) -> Answer:
    """Whether every frame between two plays cleanly."""
    first, last = within
    played = session_of(lesson, **at).played()
    return all(each.state == "clean" for each in played if each.start < last and each.end > first)


def faults_by(lesson: Lesson, *, edit: int, states: list[str], **at: Any) -> Answer:
    """How many stretches are in one of these states because of an edit, by index."""
    played = session_of(lesson, **at).played()
    return sum(each.edit == edit and each.state in states for each in played)


def state_at(lesson: Lesson, *, frame: int, **at: Any) -> Answer:
    played = session_of(lesson, **at).played()
    for each in played:
        if each.start <= frame < each.end:
            return str(each.state)
    raise LookupError(f"no frame {frame}")


def laid_at(lesson: Lesson, *, track: str, frame: int, **at: Any) -> Answer:
    """The source that a picture or sound track holds at a frame, or "nothing"."""
    run = session_of(lesson, **at).recorded().on(side_named(track)).at(frame)
    return "nothing" if run is None else run.value.source


def laid_length(lesson: Lesson, *, track: str, source: str, **at: Any) -> Answer:
    """How much of a track holds frames of a source."""
    session = session_of(lesson, **at)
    runs = session.recorded().on(side_named(track)).runs
    frames = sum(run.end - run.start for run in runs if run.value.source == source)
    return duration(frames, session.bench.rate)


def generation_at(lesson: Lesson, *, track: str, frame: int, **at: Any) -> Answer:
    run = session_of(lesson, **at).recorded().on(side_named(track)).at(frame)
    return 0 if run is None else run.value.generation


def track_unchanged(lesson: Lesson, *, track: str, before: int, **at: Any) -> Answer:
    """Whether a track holds the same as after the first `before` edits."""
    now, then = session_of(lesson, **at).recorded(), _before(lesson, before, at)
    return _track(now, track).runs == _track(then, track).runs


def recorded_over(lesson: Lesson, *, track: str, before: int, **at: Any) -> Answer:
    """How much of what a track played cleanly after `before` edits it plays no more."""
    session = session_of(lesson, **at)
    then = plays(_before(lesson, before, at), session.bench, side_named(track))
    now = plays(session.recorded(), session.bench, side_named(track))
    lost = sum(a is not None and a != b for a, b in zip(then, now, strict=True))
    return duration(lost, session.bench.rate)


def hole_length(lesson: Lesson, *, between: list[int], **at: Any) -> Answer:
    """How much tape between two frames has no pulses."""
    return state_length(lesson, state="no-control", within=between, **at)


def run_up(lesson: Lesson, *, edit: int, tape: str, **at: Any) -> Answer:
    """The run-up that an edit, by index, has on its source tape or on the edit master."""
    session = session_of(lesson, **at)
    made = session.edits[edit]
    if tape == "source":
        return duration(made.source.run_up(made.in_), session.bench.rate)
    return duration(after(session, edit).recorded().run_up(made.at), session.bench.rate)


def edit_length(lesson: Lesson, *, edit: int, **at: Any) -> Answer:
    session = session_of(lesson, **at)
    made = session.edits[edit]
    return duration(made.out - made.in_, session.bench.rate)


def _before(lesson: Lesson, before: int, at: dict[str, Any]) -> Tape:
    return session_of(lesson, **{**at, "edits": before}).recorded()


def _track(tape: Tape, track: str) -> Track[Any]:
    tracks: dict[str, Track[Any]] = {"control": tape.control}
    return tracks[track] if track in tracks else tape.on(side_named(track))
