"""The verbs of assignments: set, change, withdraw, extend; begin a sitting, report a practical."""

from dataclasses import dataclass
from datetime import datetime
from typing import Any

from django.db import transaction
from django.db.models import QuerySet
from django.utils import timezone

from course.cohorts.models import Cohort, Person
from course.letters import write_to
from exercises.drills.kinds import bench_practical
from exercises.models import Asked, Assignment, Attempt, Extension, Sitting
from exercises.practice.attempts import hold, new_asked, put
from exercises.practice.sittings import open_sitting


class NoTriesLeftError(Exception):
    """As many sittings were begun as may be."""


class AskedNoMoreError(Exception):
    """The assignment was withdrawn, or is meant for the learner no more."""


class OtherSetOpenError(Exception):
    """Another sitting is open; it is finished or stopped first."""


@dataclass(frozen=True, kw_only=True)
class Terms:
    """What is asked: the columns of an assignment, and the people it is for (none: all)."""

    columns: dict[str, Any]
    people: list[Person]


def set_assignment(
    instructor: Person, cohort: Cohort, terms: Terms, *, now: datetime | None = None
) -> Assignment:
    """A new one. Those whom it is for find it on Today once it opens."""
    with transaction.atomic():
        made = Assignment.objects.create(
            cohort=cohort, made_by=instructor, made_at=now or timezone.now(), **terms.columns
        )
        made.people.set(terms.people)
        for person in meant_for(made):
            write_to(person, f"New: {made.title}", f"{instructor} asks for it in {cohort}.")
    return made


def change_assignment(assignment: Assignment, terms: Terms) -> Assignment:
    """Other terms from now on. Sittings that were begun keep theirs; no attempt is touched."""
    with transaction.atomic():
        Assignment.objects.filter(pk=assignment.pk).update(**terms.columns)
        assignment.people.set(terms.people)
    assignment.refresh_from_db()
    return assignment


def withdraw_assignment(assignment: Assignment, *, now: datetime | None = None) -> None:
    """It is asked no more. What was done for it stays."""
    standing = Assignment.objects.filter(pk=assignment.pk, withdrawn_at=None)
    standing.update(withdrawn_at=now or timezone.now())


def extend(
    instructor: Person, assignment: Assignment, learner: Person, due_at: datetime, reason: str
) -> Extension:
    """More time for one person; the last extension counts."""
    with transaction.atomic():
        made = Extension.objects.create(
            assignment=assignment, person=learner, due_at=due_at, reason=reason, by=instructor
        )
        told = f"{instructor} gives you until {timezone.localtime(due_at):%A %-d %B, %H:%M}."
        write_to(learner, f"More time: {assignment}", told)
    return made


def meant_for(assignment: Assignment) -> list[Person]:
    """Its people by name, in the cohort now."""
    learners = Person.objects.learning_in(assignment.cohort)
    chosen = assignment.people.values_list("pk", flat=True)
    return list((learners.filter(pk__in=chosen) if chosen else learners).order_by("name", "pk"))


def begin_sitting(
    learner: Person, assignment: Assignment, *, now: datetime | None = None
) -> Sitting:
    """A sitting for the assignment, or the one that is open already.

    Raises NoTriesLeftError and OtherSetOpenError, having begun nothing.
    """
    with transaction.atomic():
        hold(learner)
        going = open_sitting(learner)
        if going and going.assignment_id != assignment.pk:
            raise OtherSetOpenError
        return going or new_sitting(learner, assignment, now or timezone.now())


def new_sitting(learner: Person, assignment: Assignment, now: datetime) -> Sitting:
    begun = Sitting.objects.filter(person=learner, assignment=assignment)
    if assignment.tries and begun.count() >= assignment.tries:
        raise NoTriesLeftError
    return Sitting.objects.create(
        person=learner,
        assignment=assignment,
        skills=assignment.skills,
        kinds=assignment.kinds,
        length=assignment.questions or 0,
        right_needed=assignment.right_needed,
        started_at=now,
    )


def practical_of(learner: Person, assignment: Assignment, *, now: datetime | None = None) -> Asked:
    """The open question that asks for the report; a new one where the last was answered.

    There is one open report a person at a time: that of another practical is put away, and
    asked again when its page is opened.
    """
    mine = Asked.objects.filter(person=learner, assignment=assignment)
    waiting = mine.filter(attempt=None).select_related("attempt")
    going = waiting.filter(latest=True).first()
    if going:
        return going
    with transaction.atomic():
        hold(learner)
        again = sent_back_of(mine)
        return put(waiting.first() or new_report(learner, assignment, again, now=now))


def new_report(
    learner: Person,
    assignment: Assignment,
    again: Attempt | None,
    *,
    now: datetime | None = None,
) -> Asked:
    """What asks for one, in the stead of another where one was sent back; not saved yet."""
    question = bench_practical.practical(assignment.title, assignment.task)
    made = new_asked(learner, bench_practical.KIND, 0, question, now)
    made.assignment, made.again = assignment, again
    return made


def sent_back_of(asked: QuerySet[Asked]) -> Attempt | None:
    """The last report, where it was sent back: the next one is written in its stead."""
    last = Attempt.objects.filter(asked__in=asked).listed().first()
    return last if last and last.sent_back else None  # type: ignore[attr-defined]


def report_again(report: Attempt) -> Asked:
    """What asks for a report in the stead of one that was sent back; asked twice, the same one.

    Raises AskedNoMoreError.
    """
    again = Asked.objects.filter(again=report).select_related("attempt").first()
    if again and hasattr(again, "attempt"):
        return again
    theirs = Assignment.objects.of_learner(report.person).standing()
    practical_now = theirs.filter(pk=report.asked.assignment_id or 0).first()
    if practical_now is None:
        raise AskedNoMoreError
    return practical_of(report.person, practical_now)
