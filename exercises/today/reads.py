"""What Today shows: the next step with its reason, the drills, the latest answers."""

from typing import Any

from django.utils import timezone

from course.cohorts.models import Notice, Person
from course.lessons.reading import Read, readings_of
from course.lessons.shelf import shelf
from exercises.assignments.assigned import current
from exercises.mastery.next_step import DrillState, next_step
from exercises.models import Attempt
from exercises.practice.sittings import open_sitting
from exercises.reviews.verbs import news_of
from exercises.sign_offs.verbs import standing_of
from exercises.standing.scores import Progress, progress_of

LATEST = 5


def today_of(person: Person) -> dict[str, Any]:
    """The context of the page; a constant number of queries."""
    drills = progress_of(person)
    states = [state_of(drill) for drill in drills if not drill.kind.by_hand]
    slugs = [lesson.slug for lesson in shelf().lessons]
    course = [(slug, [state for state in states if state.lesson == slug]) for slug in slugs]
    course.append(("", [state for state in states if state.lesson not in slugs]))
    readings = readings_of(person)
    step = next_step(course, {each.lesson.slug for each in readings if each.done})
    drill = next((each for each in drills if step and each.kind.slug == step.slug), None)
    slug = drill.kind.lesson if drill else step.slug if step else ""
    return {
        "step": step,
        "drill": drill,
        "lesson": shelf().find(slug),
        "read": next((each for each in readings if each.lesson.slug == slug), None),
        "begun": latest_begun(readings),
        "drills": drills,
        "latest": Attempt.objects.filter(person=person).listed()[:LATEST],
        "cohorts": list(person.cohorts.all()),
        "assigned": current(person, now=timezone.now()),
        "going": open_sitting(person),
        "sign_offs": standing_of(person),
        "told": list(Notice.objects.waiting_for(person)),
        "news": news_of(person),
    }


def latest_begun(readings: list[Read]) -> Read | None:
    """Where the person was reading last, in a lesson that they have not read to its end."""
    begun = [(each.reading.turn, each) for each in readings if each.reading and each.begun]
    return max(begun, key=lambda each: each[0])[1] if begun else None


def state_of(drill: Progress) -> DrillState:
    kind = drill.kind
    return DrillState(
        slug=kind.slug, title=kind.title, lesson=kind.lesson, rights=tuple(drill.rights)
    )
