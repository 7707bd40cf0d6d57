"""Reads: how people stand with what was asked of them. Constant numbers of queries."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime

from course.cohorts.models import Cohort, Person
from exercises.assignments.verbs import meant_for
from exercises.assignments.work import Doing, Key, Work, works_of
from exercises.models import Assignment, Extension


@dataclass(frozen=True, kw_only=True)
class AssignmentStanding:
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
        """Done after its time, or not done and its time is over.

        What a clock that was ahead has dated into the future may have been in time.
        """
        when = self.work.at if self.work.doing in (Doing.DONE, Doing.WAITS) else self.now
        return when is not None and self.due_at < when <= self.now

    @property
    def words(self) -> str:
        """As an instructor reads it."""
        if self.work.doing in (Doing.DONE, Doing.WAITS):
            return f"{self.work.doing}, late" if self.late else str(self.work.doing)
        return f"{self.work.doing}, overdue" if self.late else str(self.work.doing)

    @property
    def own_words(self) -> str:
        """As the learner reads it."""
        return self.words.replace("for the learner", "for you")


@dataclass(frozen=True)
class Counts:
    """An assignment of a cohort, and how many of its people stand where."""

    assignment: Assignment
    people: int
    done: int
    late: int
    waits: int
    sent_back: int

    @property
    def words(self) -> str:
        """In a few words, for a list: what is nought is left out."""
        numbers = {"waiting for you": self.waits, "sent back": self.sent_back, "late": self.late}
        told = [f"{number} {what}" for what, number in numbers.items() if number]
        return ", ".join([f"{self.done} of {self.people} done", *told])


NOTHING = Work(doing=Doing.TO_DO)


def standings_in(cohort: Cohort, *, now: datetime) -> list[list[AssignmentStanding]]:
    """Every assignment of a cohort, each with its people; five queries and one an assignment.

    The number of assignments is small and chosen by people; that of people and attempts is not.
    """
    found = list(Assignment.objects.filter(cohort=cohort).standing().order_by("-due_at", "-pk"))
    return standings_of(found, now=now)


def standings_of(found: Sequence[Assignment], *, now: datetime) -> list[list[AssignmentStanding]]:
    works, more = works_of(found), extensions_of(found)
    return [
        [standing(each, person, works, more, now) for person in meant_for(each)] for each in found
    ]


def mine(person: Person, *, now: datetime) -> list[AssignmentStanding]:
    """What is asked of somebody and has opened, the soonest first; five queries."""
    meant = Assignment.objects.of_learner(person).standing().opened(now).soonest_first()
    found = list(meant.select_related("cohort"))
    if not found:
        return []
    works, more = works_of(found, person), extensions_of(found, person)
    stands = [standing(each, person, works, more, now) for each in found]
    return sorted(stands, key=lambda each: (each.due_at, each.assignment.pk))


def current(person: Person, *, now: datetime) -> list[AssignmentStanding]:
    """What Today tells of it: what is not done, and what is but was not due yet."""
    return [each for each in mine(person, now=now) if not each.done or each.due_at > now]


def standing(
    assignment: Assignment,
    person: Person,
    works: dict[Key, Work],
    more: dict[Key, datetime],
    now: datetime,
) -> AssignmentStanding:
    key = (assignment.pk, person.pk)
    return AssignmentStanding(
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
    return {(row.assignment_id, row.person_id): row.due_at for row in rows.order_by("pk")}


def counts(assignment: Assignment, stands: Sequence[AssignmentStanding]) -> Counts:
    """How many are done, how many late (done or not), how many wait, and for whom."""
    return Counts(
        assignment=assignment,
        people=len(stands),
        done=sum(each.done for each in stands),
        late=sum(each.late for each in stands),
        waits=sum(each.work.doing == Doing.WAITS for each in stands),
        sent_back=sum(each.work.doing == Doing.SENT_BACK for each in stands),
    )
