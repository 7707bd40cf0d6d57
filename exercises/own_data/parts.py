"""What the site keeps about somebody, table by table: all that a bundle has.

A row is about whoever it is of. What an instructor writes about a learner is in the bundle
of that learner.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Any

from django.db.models import Field, ForeignKey, Model, QuerySet

from course.cohorts.models import (
    Bench,
    BenchChange,
    Cohort,
    LinkAgreement,
    LinkRequest,
    Membership,
    Notice,
    Person,
    ResetLink,
    RosterUpload,
)
from course.lessons.models import Reading
from exercises.models import (
    Asked,
    Assignment,
    Attempt,
    BenchAction,
    BenchSheet,
    Extension,
    Outcome,
    OwnDrill,
    OwnRevision,
    PracticalRun,
    Review,
    ReviewRead,
    SignOff,
    Sitting,
    Summary,
    Upload,
    Withdrawal,
)

AT_ONCE = 200
# By which column a row of another table is named; by its number where none is told.
NAMED_BY: dict[type[Model], str] = {
    Person: "name",
    Cohort: "name",
    Assignment: "title",
    Asked: "token",
    Attempt: "key",
    PracticalRun: "token",
}


@dataclass(frozen=True, kw_only=True)
class Part:
    """A file: the rows of `model` whose `of` is the person, without the columns `omit`."""

    name: str
    model: type[Model]
    of: str
    omit: tuple[str, ...] = ()
    added: dict[str, str] = field(default_factory=dict)

    def columns(self) -> dict[str, str]:
        """Each heading, with what is read for it."""
        fields = [each for each in self.model._meta.concrete_fields if each.name not in self.omit]
        return {each.name: path_of(each) for each in fields} | self.added

    def rows(self, person: Person) -> Iterator[Sequence[Any]]:
        """The person's rows, the earliest first, a few at once. A row may be long."""
        found: QuerySet[Any] = QuerySet(self.model).filter(**{self.of: person.pk}).order_by("pk")
        return found.values_list(*self.columns().values()).iterator(chunk_size=AT_ONCE)


def path_of(each: "Field[Any, Any]") -> str:
    """From which column a cell is read: a name rather than a number, where there is one."""
    related = each.related_model if isinstance(each, ForeignKey) else None
    naming = NAMED_BY.get(related) if isinstance(related, type) else None
    return f"{each.name}__{naming}" if naming else each.attname


PARTS = (
    Part(name="account", model=Person, of="pk", omit=("password",)),
    Part(name="places-in-cohorts", model=Membership, of="person"),
    Part(name="reading", model=Reading, of="person"),
    # A question that waits for an answer keeps it to itself here too.
    Part(
        name="questions",
        model=Asked,
        of="person",
        omit=("question", "seed"),
        added={"shown": "question__shown"},
    ),
    Part(
        name="answers",
        model=Attempt,
        of="person",
        added={"question": "asked__question"},
    ),
    Part(name="pictures-sent", model=Upload, of="attempt__person"),
    Part(name="scores-by-instructors", model=Outcome, of="attempt__person"),
    Part(name="reviews", model=Review, of="attempt__person"),
    Part(name="reviews-read", model=ReviewRead, of="review__attempt__person"),
    Part(name="sittings", model=Sitting, of="person"),
    # Without what lay ready: it says where the log is wrong, also of a run that goes on.
    Part(name="practicals", model=PracticalRun, of="person", omit=("set_up",)),
    Part(name="bench-sheets", model=BenchSheet, of="person"),
    Part(name="practicals-actions", model=BenchAction, of="run__person"),
    # Without what only spares the next answer a look at those before: they are in answers.
    Part(
        name="summary",
        model=Summary,
        of="person",
        omit=("recent", "rows", "given", "version"),
    ),
    Part(name="assignments-by-name", model=Assignment, of="people"),
    Part(name="extensions", model=Extension, of="person"),
    Part(name="sign-offs", model=SignOff, of="person"),
    Part(name="sign-offs-withdrawn", model=Withdrawal, of="sign_off__person"),
    Part(name="notices", model=Notice, of="person"),
    Part(name="password-links", model=ResetLink, of="for_person"),
    Part(name="password-links-asked-for", model=LinkRequest, of="for_person"),
    Part(name="password-links-agreed-to", model=LinkAgreement, of="request__for_person"),
    Part(name="cohorts-taught", model=Cohort, of="instructors"),
    Part(name="benches", model=Bench, of="made_by"),
    Part(name="bench-changes", model=BenchChange, of="by"),
    Part(name="drills-written", model=OwnDrill, of="made_by"),
    Part(name="drills-written-revisions", model=OwnRevision, of="by"),
    Part(name="rosters-sent", model=RosterUpload, of="person", omit=("text", "made")),
)

# Every other column that names a person, and why it makes no file of its own.
EXPLAINED = {
    "cohorts.Cohort.learners": "the same as places-in-cohorts",
    "cohorts.ResetLink.made_by": "about whoever the link was for",
    "cohorts.LinkRequest.asked_by": "about whoever the link is for",
    "cohorts.LinkRequest.refused_by": "about whoever the link is for",
    "cohorts.LinkAgreement.by": "about whoever the link is for",
    "exercises.Assignment.made_by": "about those it was set for",
    "exercises.Extension.by": "about whoever got it",
    "exercises.BenchSheet.by": "about whoever was at the bench",
    "exercises.Review.by": "about whoever gave the answer; one's own replies are in reviews",
    "exercises.SignOff.instructor": "about whoever was signed off",
    "exercises.Withdrawal.by": "about whoever was signed off",
    "admin.LogEntry.user": "what administrators did on their own pages, about other rows",
}
