"""The verbs of reviewing: say something about an attempt, reply, answer again; and its reads."""

from dataclasses import dataclass
from datetime import datetime

from django.core.exceptions import PermissionDenied
from django.db import IntegrityError, transaction
from django.db.models import OuterRef, QuerySet, Subquery
from django.utils import timezone

from course.cohorts.access import teaches
from course.cohorts.models import Cohort, Membership, Person
from course.letters import write_to
from course.unwritable import where_it_can_be_kept
from exercises.assignments.verbs import report_again
from exercises.drills.kinds import bench_practical
from exercises.forms.keys import first_of
from exercises.models import Asked, Attempt, Review, ReviewRead
from exercises.practice.attempts import ask_again
from exercises.standing.outcomes import settle

RIGHT = 100


class RepliedError(Exception):
    """The learner has replied already, in other words."""


class NothingToAnswerError(Exception):
    """No instructor has written about this attempt, or none has sent it back."""


@dataclass(frozen=True, kw_only=True)
class Said:
    """What an instructor says; `score` in hundredths where they give one.

    `key` is the form's own, so that it counts once.
    """

    what: str
    text: str
    score: int | None = None
    key: str

    @property
    def right(self) -> bool | None:
        return None if self.score is None else self.score == RIGHT


def review(by: Person, attempt: Attempt, said: Said, *, now: datetime | None = None) -> Review:
    """Keep what an instructor says about an attempt. Sent twice, it is kept once.

    Two instructors at once are both kept; the later score counts. Raises SentBeforeError where
    the form's key has kept something else.
    """
    if not teaches(by, attempt.person):
        raise PermissionDenied("Reviews are for those who teach the learner.")
    made = Review(
        attempt=attempt,
        by=by,
        what=said.what,
        text=said.text,
        right=said.right,
        score=said.score,
        key=said.key,
    )
    try:
        with transaction.atomic():
            Attempt.objects.select_for_update().get(pk=attempt.pk)
            made.at = now or timezone.now()
            made.save(force_insert=True)
            if made.what == Review.What.SCORE:
                settle(made)
            write_to(attempt.person, f"About your answer to {attempt.kind.title}", told(made))
    except IntegrityError:
        return first_of(made, "attempt_id", "by_id", "what", "text", "score")
    return made


def told(made: Review) -> str:
    """A review, as its learner is told of it."""
    return f"{made.by} writes: {made.text or 'your answer is judged.'}"


def reply(learner: Person, attempt: Attempt, text: str, *, now: datetime | None = None) -> Review:
    """The learner's one reply. The same a second time gives the first; others: RepliedError."""
    if learner != attempt.person:
        raise PermissionDenied("The learner replies.")
    if not attempt.reviews.by_instructors().exists():
        raise NothingToAnswerError
    made = Review(attempt=attempt, by=learner, what=Review.What.REPLY, text=text)
    made.at = now or timezone.now()
    try:
        with transaction.atomic():
            made.save(force_insert=True)
    except IntegrityError:
        first = attempt.reviews.get(what=Review.What.REPLY)
        if first.text != text:
            raise RepliedError from None
        return first
    return made


def answer_again(attempt: Attempt) -> Asked:
    """A new question of the same situation, once a time that it was sent back.

    Raises NothingToAnswerError, and OutdatedError or AskedNoMoreError where it is asked no more.
    """
    if not attempt.reviews.filter(what=Review.What.SENT_BACK).exists():
        raise NothingToAnswerError
    is_report = attempt.drill == bench_practical.KIND.slug
    return report_again(attempt) if is_report else ask_again(attempt)


def thread_of(attempt: Attempt) -> list[Review]:
    """All that was said about an attempt, in order; one query."""
    return list(attempt.reviews.in_order().select_related("by"))


def mark_read(thread: list[Review], *, by_learner: bool) -> None:
    """Remember that those whom the reviews are for have opened them."""
    known = set(ReviewRead.objects.filter(review__in=thread).values_list("review", flat=True))
    meant = [each for each in thread if (each.what != Review.What.REPLY) == by_learner]
    unread = [ReviewRead(review=each) for each in meant if each.pk not in known]
    if unread:
        with where_it_can_be_kept():  # they are shown all the same
            ReviewRead.objects.bulk_create(unread, ignore_conflicts=True)


def news_of(person: Person) -> list[Review]:
    """What instructors have written about the person's attempts and they have not opened."""
    written = Review.objects.filter(attempt__person=person).by_instructors().unread()
    return list(written.in_order().select_related("by", "attempt__own__drill"))


def queue_of(by: Person, cohort: Cohort | None = None) -> QuerySet[Attempt]:
    """What waits for an instructor in their cohorts, or in one of them, the oldest first.

    Each has `cohort_pk`, one of the cohorts in which the instructor meets the learner.
    """
    placed = Attempt.objects.waiting().annotate(cohort_pk=place_of("person", by, cohort))
    placed = placed.exclude(cohort_pk=None)
    placed = placed.select_related("person", "upload", "asked__assignment", "own__drill")
    placed = placed.defer("asked__question")
    return placed.order_by("pk")


def replies_to(by: Person, cohort: Cohort | None = None) -> QuerySet[Review]:
    """The replies that no instructor has opened yet, the oldest first, with `cohort_pk` too."""
    unread = Review.objects.unread().filter(what=Review.What.REPLY)
    place = place_of("attempt__person", by, cohort)
    placed = unread.annotate(cohort_pk=place).exclude(cohort_pk=None)
    return placed.select_related("attempt__own__drill", "by").order_by("pk")


def place_of(person: str, by: Person, cohort: Cohort | None) -> Subquery:
    """One of the cohorts where somebody teaches the person (a field); none, where they don't."""
    taught = [cohort] if cohort else Cohort.objects.taught_by(by)
    places = Membership.objects.filter(
        person=OuterRef(person), person__role=Person.Role.LEARNER, cohort__in=taught
    )
    return Subquery(places.order_by("cohort__name", "cohort").values("cohort")[:1])
