"""The verbs of a practice session: start a set of questions, take the next one, stop."""

from collections.abc import Sequence
from datetime import datetime

from django.db import transaction
from django.db.models import Count, Q, QuerySet
from django.utils import timezone

from course.cohorts.models import Person
from exercises.attempts import ask, hold
from exercises.models import Asked, Attempt, PracticeSession
from exercises.offers import next_kind

LENGTHS = (5, 10, 15, 20)


def start(
    person: Person, skills: Sequence[str], length: int, *, now: datetime | None = None
) -> PracticeSession:
    """A set of questions; the one that is open already, where there is one."""
    chosen = {"skills": list(skills), "length": length}
    with transaction.atomic():
        hold(person)
        return open_session(person) or PracticeSession.objects.create(
            person=person, started_at=now or timezone.now(), **chosen
        )


def open_session(person: Person) -> PracticeSession | None:
    return PracticeSession.objects.open_of(person).first()


def session_going(person: Person) -> PracticeSession | None:
    """The open one, with `answered`, how many of its questions are; one query."""
    counted = PracticeSession.objects.open_of(person).annotate(answered=Count("asked__attempt"))
    return counted.first()


def sessions_of(person: Person) -> QuerySet[PracticeSession]:
    """All sets of somebody, the latest first, with `answered` and `right` counted."""
    sets = PracticeSession.objects.filter(person=person).latest_first()
    right = Count(
        "asked__attempt",
        filter=Q(asked__attempt__outcome__right=True)
        | Q(asked__attempt__outcome=None, asked__attempt__right=True),
    )
    return sets.annotate(answered=Count("asked__attempt"), right=right)


def next_question(session: PracticeSession) -> Asked | None:
    """The question that waits, or the next one; None, and the set has ended, after the last.

    Going back and forth, or asking twice, gives the same question.
    """
    if not session.is_open:
        return None
    taken = taken_by(session)
    if len(taken) >= session.length:
        stop(session)
        return None
    waiting = session.asked.open().select_related("attempt").first()
    if waiting and waiting.is_open:
        return waiting
    asked = ask(session.person, next_kind(session, taken), skills=session.skills)
    if asked.session_id != session.pk and asked.is_open:
        asked.session = session
        asked.save(update_fields=["session"])
    return asked


def taken_by(session: PracticeSession) -> list[str]:
    """The drills that it has asked so far, in the order of the answers."""
    answers = answers_of(session).order_by("pk")
    return list(answers.values_list("drill", flat=True))


def answers_of(session: PracticeSession) -> QuerySet[Attempt]:
    return Attempt.objects.filter(asked__session=session)


def in_order(session: PracticeSession) -> list[Attempt]:
    """Its answers as they were given, the first one first."""
    found = Attempt.objects.filter(asked__session=session).with_standing().with_again()
    return list(found.order_by("pk"))


def left_of(session: PracticeSession) -> int:
    """How many of its questions are still to be answered; one query."""
    return max(0, session.length - answers_of(session).count())


def end_if_answered(session: PracticeSession) -> None:
    """End it with its last answer, so that another set can be begun at once."""
    if session.is_open and not left_of(session):
        stop(session)


def stop(session: PracticeSession, *, now: datetime | None = None) -> None:
    """End it; a question that waits stays open in its drill. Stopping twice changes nothing."""
    moment = now or timezone.now()
    PracticeSession.objects.filter(pk=session.pk, ended_at=None).update(ended_at=moment)
    session.refresh_from_db(fields=["ended_at"])
