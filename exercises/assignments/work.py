"""Reads: what people have done for assignments. Constant numbers of queries."""

from collections import Counter, defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from django.db.models import Count, OuterRef, Q, QuerySet, Subquery

from course.cohorts.models import Person
from course.lessons.models import Reading
from exercises.models import Assignment, Attempt, Sitting

Key = tuple[int, int]  # assignment, person
NOW_RIGHT = Q(asked__attempt__outcome__right=True) | Q(
    asked__attempt__outcome=None, asked__attempt__right=True
)


class Doing(StrEnum):
    """How far somebody is: what they have done; whether it is late is told apart."""

    TO_DO = "to do"
    BEGUN = "begun"
    SENT_BACK = "sent back, waits for the learner"
    WAITS = "waits for the instructor"
    DONE = "done"


@dataclass(frozen=True, kw_only=True)
class Work:
    """What somebody has done for an assignment; `key` leads to it."""

    doing: Doing
    at: datetime | None = None
    tries: int = 0
    best: int | None = None
    key: str = ""


def works_of(found: Sequence[Assignment], person: Person | None = None) -> dict[Key, Work]:
    return {
        **sittings_done(found, person),
        **lessons_read(found, person),
        **practicals_reported(found, person),
    }


def sittings_done(found: Sequence[Assignment], person: Person | None) -> dict[Key, Work]:
    """By the sittings that were begun for it: done with the first that had enough right."""
    rows = Sitting.objects.filter(assignment__in=found).order_by("pk")
    if person:
        rows = rows.filter(person=person)
    answers = Attempt.objects.filter(asked__sitting=OuterRef("pk")).latest_first()
    counted = rows.annotate(
        right=Count("asked__attempt", filter=NOW_RIGHT),
        last=Subquery(answers.values("answered_at")[:1]),
    )
    sittings: dict[Key, list[Sitting]] = defaultdict(list)
    for row in counted:
        sittings[row.assignment_id or 0, row.person_id].append(row)
    waiting = waiting_in(rows) if any(each.kinds for each in found) else Counter()
    return {key: sitting_work(begun, waiting) for key, begun in sittings.items()}


def waiting_in(sittings: QuerySet[Sitting]) -> Counter[int]:
    """By sitting, how many of its answers an instructor has still to read; one query."""
    waiting = Attempt.objects.waiting().filter(asked__sitting__in=sittings.order_by())
    return Counter(waiting.values_list("asked__sitting", flat=True))


def sitting_work(begun: Sequence[Sitting], waiting: Counter[int]) -> Work:
    """Of one person: done, or waiting where what is to be read may make it so."""
    rights = [row.right for row in begun]  # type: ignore[attr-defined]
    at_most = [right + waiting[row.pk] for row, right in zip(begun, rights, strict=True)]
    passed, may_pass = enough(begun, rights), enough(begun, at_most)
    shown = (passed or may_pass or begun[-1:])[0]
    return Work(
        doing=Doing.DONE if passed else Doing.WAITS if may_pass else Doing.BEGUN,
        at=shown.last,  # type: ignore[attr-defined]
        tries=len(begun),
        best=max(rights),
        key=shown.token,
    )


def enough(begun: Sequence[Sitting], rights: Sequence[int]) -> list[Sitting]:
    """Those that have as many right as was asked for when they were begun."""
    counted = zip(begun, rights, strict=True)
    return [row for row, right in counted if right >= (row.right_needed or 0)]


def lessons_read(found: Sequence[Assignment], person: Person | None) -> dict[Key, Work]:
    """By the reading state: a lesson read before it was asked for is done as well."""
    asked = {each.lesson: each.pk for each in found if each.what == Assignment.What.LESSON}
    rows = Reading.objects.filter(lesson__in=asked)
    rows = rows.filter(person=person) if person else rows
    works = {}
    for row in rows:
        for each in found:
            if each.lesson and each.lesson == row.lesson:
                doing = Doing.DONE if row.done_at else Doing.BEGUN
                works[each.pk, row.person_id] = Work(doing=doing, at=row.done_at)
    return works


def practicals_reported(found: Sequence[Assignment], person: Person | None) -> dict[Key, Work]:
    """By the last report: it waits until an instructor calls it right, or sends it back."""
    rows = Attempt.objects.filter(asked__assignment__in=found).select_related("asked")
    rows = (rows.filter(person=person) if person else rows).with_standing()
    works = {}
    for row in rows.order_by("pk"):
        key = (row.asked.assignment_id or 0, row.person_id)
        works[key] = Work(doing=report_doing(row), at=row.answered_at, key=row.key)
    return works


def report_doing(report: Attempt) -> Doing:
    result = report.result
    if result.waits:
        return Doing.SENT_BACK if report.sent_back else Doing.WAITS  # type: ignore[attr-defined]
    return Doing.DONE if result.right else Doing.BEGUN
