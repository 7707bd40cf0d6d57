"""What to do next, and why that: from the course's order and what was answered so far."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass

from exercises.mastery.progress import HOLDS, is_held, unbroken


@dataclass(frozen=True, kw_only=True)
class DrillState:
    """A drill as somebody stands with it: `rights` from the latest answer back."""

    slug: str
    title: str
    lesson: str
    rights: tuple[bool, ...] = ()


@dataclass(frozen=True, kw_only=True)
class NextStep:
    """The next thing: `what` is "lesson" or "drill", `slug` says which, `why` gives the reason."""

    what: str
    slug: str
    why: str


def next_step(
    lessons: Sequence[tuple[str, Sequence[DrillState]]], read: Collection[str] = ()
) -> NextStep | None:
    """A drill that went wrong last, or else the first thing in the course's order not done.

    `lessons` gives each lesson's slug and its drills, in order; drills that no lesson
    teaches yet stand under "". `read` are the lessons that were read to the end. When
    everything is held the drill that was practised least comes back. None for an
    empty course.
    """
    drills = [drill for _, placed in lessons for drill in placed]
    for lesson, placed in lessons:
        for drill in placed:
            if drill.rights and not drill.rights[0] and not is_held(list(drill.rights)):
                return towards(lesson, drill, read)
    tried = [n for n, (_, placed) in enumerate(lessons) if any(each.rights for each in placed)]
    for number, (lesson, placed) in enumerate(lessons):
        for drill in placed:
            if not is_held(list(drill.rights)):
                return towards(lesson, drill, read)
        # Somebody who practises what comes later has this behind them, marked as read or not.
        if lesson and not placed and lesson not in read and number >= max(tried, default=0):
            return NextStep(what="lesson", slug=lesson, why=why_read(number))
    if not drills:
        return None
    least = min(drills, key=lambda drill: (len(drill.rights), drill.slug))
    return NextStep(
        what="drill",
        slug=least.slug,
        why="Every drill is held. This is the one you have practised least.",
    )


def why_read(number: int) -> str:
    return "It is the next in the course." if number else "The course begins here."


def towards(lesson: str, drill: DrillState, read: Collection[str]) -> NextStep:
    """Read first, then practise; after a wrong answer, practise again."""
    if not drill.rights and not lesson:
        return NextStep(what="drill", slug=drill.slug, why="You have not tried this drill yet.")
    if not drill.rights and lesson in read:
        return NextStep(
            what="drill",
            slug=drill.slug,
            why="You have read the lesson that teaches it, and have not tried it yet.",
        )
    if not drill.rights:
        return NextStep(
            what="lesson",
            slug=lesson,
            why=f"It teaches what the drill “{drill.title}” asks, and you have not tried that yet.",
        )
    if not drill.rights[0]:
        return NextStep(
            what="drill", slug=drill.slug, why="Your last answer here was not right yet."
        )
    more = HOLDS - unbroken(drill.rights)
    return NextStep(
        what="drill", slug=drill.slug, why=f"Not held yet: {more} more right without a miss."
    )
