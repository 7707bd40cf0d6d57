"""The verbs of a sitting: start it, take the next one, stop."""

from collections.abc import Sequence
from datetime import datetime

from django.db import transaction
from django.db.models import Count, Q, QuerySet
from django.utils import timezone

from course.cohorts.models import Person
from exercises.models import Asked, Attempt, Sitting
from exercises.practice.attempts import ask, hold
from exercises.practice.next_drill import next_kind

LENGTHS = (5, 10, 15, 20)


def start(
    person: Person, skills: Sequence[str], length: int, *, now: datetime | None = None
) -> Sitting:
    """The one that is open already, where there is one."""
    chosen = {"skills": list(skills), "length": length}
    with transaction.atomic():
        hold(person)
        return open_sitting(person) or Sitting.objects.create(
            person=person, started_at=now or timezone.now(), **chosen
        )


def open_sitting(person: Person) -> Sitting | None:
    """The one that somebody has not ended."""
    return Sitting.objects.open_of(person).first()


def sittings_of(person: Person) -> QuerySet[Sitting]:
    """All sittings of somebody, the latest first, with `right` counted."""
    found = Sitting.objects.filter(person=person).latest_first()
    right = Count(
        "asked__attempt",
        filter=Q(asked__attempt__outcome__right=True)
        | Q(asked__attempt__outcome=None, asked__attempt__right=True),
    )
    return found.annotate(right=right)


def next_question(sitting: Sitting) -> Asked | None:
    """The question that waits, or the next one; None, and the sitting has ended, after the last.

    Going back and forth, or asking twice, gives the same question.
    """
    if not sitting.is_open:
        return None
    taken = taken_by(sitting)
    if len(taken) >= sitting.length:
        stop(sitting)
        return None
    waiting = sitting.asked.open().select_related("attempt").first()
    if waiting and waiting.waits():
        return waiting
    asked = ask(sitting.person, next_kind(sitting, taken), skills=sitting.skills)
    if asked.sitting_id != sitting.pk and asked.waits():
        asked.sitting = sitting
        asked.save(update_fields=["sitting"])
    return asked


def taken_by(sitting: Sitting) -> list[str]:
    """The drills that it has asked so far, in the order of the answers."""
    answers = answers_of(sitting).order_by("pk")
    return list(answers.values_list("drill", flat=True))


def answers_of(sitting: Sitting) -> QuerySet[Attempt]:
    return Attempt.objects.filter(asked__sitting=sitting)


def in_order(sitting: Sitting) -> list[Attempt]:
    """Its answers as they were given, the first one first."""
    found = Attempt.objects.filter(asked__sitting=sitting).with_standing().with_again()
    return list(found.order_by("pk"))


def stop(sitting: Sitting, *, now: datetime | None = None) -> None:
    """End it; a question that waits stays open in its drill. Stopping twice changes nothing."""
    moment = now or timezone.now()
    Sitting.objects.filter(pk=sitting.pk, ended_at=None).update(ended_at=moment)
    sitting.refresh_from_db(fields=["ended_at"])
