"""Reads: how people stand with what was asked of them. Constant numbers of queries."""

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from django.db.models import Count, Max, Q, QuerySet

from course.cohorts.models import Cohort, Person
from course.lessons.models import Reading
from exercises.assignments import meant_for
from exercises.models import Assignment, Attempt, Extension, PracticeSession

NOW_RIGHT = Q(asked__attempt__outcome__right=True) | Q(
    asked__attempt__outcome=None, asked__attempt__right=True
)


class Doing(StrEnum):
    """How far somebody is: what they have done; whether it is late is told apart."""

    TO_DO = "to do"
    BEGUN = "begun"
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


@dataclass(frozen=True, kw_only=True)
class Standing:
    """Somebody and an assignment: their own due time, and what they have done."""

    assignment: Assignment
    person: Person
    due_at: datetime
    extended: bool
    work: Work
    now: datetime

    @property
    def done(self) -> bool:
        return self.work.doing == Doing.DONE

    @property
    def late(self) -> bool:
        """Done after its time, or not done and its time is over."""
        when = self.work.at if self.work.doing in (Doing.DONE, Doing.WAITS) else self.now
        return when is not None and when > self.due_at

    @property
    def words(self) -> str:
        if self.work.doing in (Doing.DONE, Doing.WAITS):
            return f"{self.work.doing}, late" if self.late else str(self.work.doing)
        return f"{self.work.doing}, overdue" if self.late else str(self.work.doing)


@dataclass(frozen=True)
class Counts:
    """An assignment of a cohort, and how many of its people stand where."""

    assignment: Assignment
    people: int
    done: int
    late: int
    waits: int

    @property
    def words(self) -> str:
        """In a few words, for a list: what is nought is left out."""
        waiting = f"{self.waits} waiting for you" if self.waits else ""
        late = f"{self.late} late" if self.late else ""
        return ", ".join(filter(None, [f"{self.done} of {self.people} done", waiting, late]))


NOTHING = Work(doing=Doing.TO_DO)
Key = tuple[int, int]  # assignment, person


def standings_in(cohort: Cohort, *, now: datetime) -> list[list[Standing]]:
    """Every assignment of a cohort, each with its people; five queries and one an assignment.

    The number of assignments is small and chosen by people; that of people and attempts is not.
    """
    found = list(Assignment.objects.filter(cohort=cohort).standing().order_by("-due_at", "-pk"))
    return standings_of(found, now=now)


def standings_of(found: Sequence[Assignment], *, now: datetime) -> list[list[Standing]]:
    works, more = works_of(found), extensions_of(found)
    return [
        [standing(each, person, works, more, now) for person in meant_for(each)] for each in found
    ]


def mine(person: Person, *, now: datetime) -> list[Standing]:
    """What is asked of somebody and has opened, the soonest first; five queries."""
    meant = Assignment.objects.of_learner(person).standing().opened(now).soonest_first()
    found = list(meant.select_related("cohort"))
    if not found:
        return []
    works, more = works_of(found, person), extensions_of(found, person)
    stands = [standing(each, person, works, more, now) for each in found]
    return sorted(stands, key=lambda each: (each.due_at, each.assignment.pk))


def current(person: Person, *, now: datetime) -> list[Standing]:
    """What Today tells of it: what is not done, and what is but was not due yet."""
    return [each for each in mine(person, now=now) if not each.done or each.due_at > now]


def standing(
    assignment: Assignment,
    person: Person,
    works: dict[Key, Work],
    more: dict[Key, datetime],
    now: datetime,
) -> Standing:
    key = (assignment.pk, person.pk)
    return Standing(
        assignment=assignment,
        person=person,
        due_at=more.get(key, assignment.due_at),
        extended=key in more,
        work=works.get(key, NOTHING),
        now=now,
    )


def extensions_of(found: Iterable[Assignment], person: Person | None = None) -> dict[Key, datetime]:
    """The due time that counts, where one was extended: by the last extension."""
    rows = Extension.objects.filter(assignment__in=list(found))
    if person:
        rows = rows.filter(person=person)
    return {(row.assignment_id, row.person_id): row.due_at for row in rows.order_by("at", "pk")}


def works_of(found: Sequence[Assignment], person: Person | None = None) -> dict[Key, Work]:
    return {
        **sets_done(found, person),
        **lessons_read(found, person),
        **practicals_reported(found, person),
    }


def sets_done(found: Sequence[Assignment], person: Person | None) -> dict[Key, Work]:
    """By the sets that were begun for it: done with the first that had enough right."""
    rows = PracticeSession.objects.filter(assignment__in=found).order_by("started_at", "pk")
    if person:
        rows = rows.filter(person=person)
    counted = rows.annotate(
        right=Count("asked__attempt", filter=NOW_RIGHT), last=Max("asked__attempt__answered_at")
    )
    sets: dict[Key, list[PracticeSession]] = defaultdict(list)
    for row in counted:
        sets[row.assignment_id or 0, row.person_id].append(row)
    waiting = waiting_in(rows) if any(each.kinds for each in found) else Counter()
    return {key: set_work(begun, waiting) for key, begun in sets.items()}


def waiting_in(sets: QuerySet[PracticeSession]) -> Counter[int]:
    """By set, how many of its answers an instructor has still to read; one query."""
    waiting = Attempt.objects.waiting().filter(asked__session__in=sets.order_by())
    return Counter(waiting.values_list("asked__session", flat=True))


def set_work(begun: Sequence[PracticeSession], waiting: Counter[int]) -> Work:
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


def enough(begun: Sequence[PracticeSession], rights: Sequence[int]) -> list[PracticeSession]:
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
    rows = Attempt.objects.filter(asked__assignment__in=found).select_related("asked", "outcome")
    rows = rows.filter(person=person) if person else rows
    works = {}
    for row in rows.order_by("answered_at", "pk"):
        key = (row.asked.assignment_id or 0, row.person_id)
        works[key] = Work(doing=report_doing(row), at=row.answered_at, key=row.key)
    return works


def report_doing(report: Attempt) -> Doing:
    result = report.result
    if result.waits:
        return Doing.WAITS
    return Doing.DONE if result.right else Doing.BEGUN


def counts(assignment: Assignment, stands: Sequence[Standing]) -> Counts:
    """How many are done, how many late (done or not), how many wait for the instructor."""
    return Counts(
        assignment=assignment,
        people=len(stands),
        done=sum(each.done for each in stands),
        late=sum(each.late for each in stands),
        waits=sum(each.work.doing == Doing.WAITS for each in stands),
    )
