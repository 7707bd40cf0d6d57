"""What to do next, and why that: from the course's order and what was answered so far."""

from collections.abc import Sequence
from dataclasses import dataclass

from exercises.mastery.progress import COMPLETE, in_a_row, is_complete


@dataclass(frozen=True, kw_only=True)
class DrillState:
    """A drill as somebody stands with it: `rights` from the latest answer back."""

    slug: str
    title: str
    lesson: str
    rights: tuple[bool, ...] = ()


@dataclass(frozen=True, kw_only=True)
class Step:
    """The next thing: `what` is "lesson" or "drill", `slug` says which, `why` gives the reason."""

    what: str
    slug: str
    why: str


def next_step(lessons: Sequence[tuple[str, Sequence[DrillState]]]) -> Step | None:
    """A drill that went wrong last, or else the first thing in the course's order not done.

    `lessons` gives each lesson's slug and its drills, in order; drills that no lesson
    teaches yet stand under "". When everything is complete the drill that was practised
    least comes back. None for an empty course.
    """
    drills = [drill for _, placed in lessons for drill in placed]
    undone = [
        (lesson, drill)
        for lesson, placed in lessons
        for drill in placed
        if not is_complete(list(drill.rights))
    ]
    begun = [(lesson, drill) for lesson, drill in undone if drill.rights and not drill.rights[0]]
    for lesson, drill in [*begun, *undone]:
        return towards(lesson, drill)
    if not drills:
        first = next((lesson for lesson, _ in lessons if lesson), None)
        return Step(what="lesson", slug=first, why="The course begins here.") if first else None
    least = min(drills, key=lambda drill: (len(drill.rights), drill.slug))
    return Step(
        what="drill",
        slug=least.slug,
        why="You have completed every drill. This is the one you have practised least.",
    )


def towards(lesson: str, drill: DrillState) -> Step:
    """Read first, then practise; after a wrong answer, practise again."""
    if not drill.rights and not lesson:
        return Step(what="drill", slug=drill.slug, why="You have not tried this drill yet.")
    if not drill.rights:
        return Step(
            what="lesson",
            slug=lesson,
            why=f"It teaches what the drill “{drill.title}” asks, and you have not tried that yet.",
        )
    if not drill.rights[0]:
        return Step(what="drill", slug=drill.slug, why="Your last answer here was not right yet.")
    more = COMPLETE - in_a_row(drill.rights)
    return Step(what="drill", slug=drill.slug, why=f"{more} more right in a row complete it.")
