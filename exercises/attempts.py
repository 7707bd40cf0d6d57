"""The verbs of practice: put a question to somebody, take their answer."""

import secrets
from datetime import datetime
from typing import Any

from django.db import IntegrityError, transaction
from django.utils import timezone

from course.cohorts.models import Person
from exercises.drills.kind import Kind
from exercises.models import Asked, Attempt

SEEDS = 2**53  # every seed survives a round trip through JSON


class OutdatedError(Exception):
    """The question was made by an earlier revision of its kind and can't be judged now."""


def ask(
    person: Person, drill: Kind, *, seed: int | None = None, now: datetime | None = None
) -> Asked:
    """The person's open question of this drill, or a new one.

    Asking twice, at the same moment too, gives the same question.
    """
    asked = open_question(person, drill)
    if asked:
        return asked
    seed = secrets.randbelow(SEEDS) if seed is None else seed
    made = Asked(
        person=person,
        drill=drill.slug,
        revision=drill.revision,
        seed=seed,
        question=drill.make(seed).as_json(),
        asked_at=now or timezone.now(),
    )
    try:
        with transaction.atomic():
            made.save()
    except IntegrityError:
        return Asked.objects.open_for(person, drill.slug).get()
    return made


def open_question(person: Person, drill: Kind) -> Asked | None:
    """The question that waits for an answer; one of an earlier revision is put away."""
    asked = Asked.objects.open_for(person, drill.slug).first()
    if asked and asked.revision != drill.revision:
        Asked.objects.filter(pk=asked.pk).update(open=False)
        return None
    return asked


def submit(asked: Asked, answer: dict[str, Any], *, now: datetime | None = None) -> Attempt:
    """Judge the answer and keep it, once.

    A second submission of the same question, in parallel too, changes nothing and gives
    the first one's attempt. Raises `OutdatedError`, having written nothing, where the kind
    has moved on since it asked.
    """
    if asked.revision != asked.kind.revision:
        raise OutdatedError
    question = asked.as_question()
    verdict = asked.kind.grade(question, answer)
    with transaction.atomic():
        # Closing the question is the lock: of two submissions, one closes it.
        if not Asked.objects.filter(pk=asked.pk, open=True).update(open=False):
            return Attempt.objects.get(asked=asked)
        return Attempt.objects.create(
            asked=asked,
            person_id=asked.person_id,
            drill=asked.drill,
            skill=question.skill,
            situation=question.situation,
            seed=asked.seed,
            revision=asked.revision,
            answer=answer,
            right=verdict.right,
            score=verdict.score,
            misconceptions=list(verdict.misconceptions),
            feedback=verdict.feedback,
            asked_at=asked.asked_at,
            answered_at=now or timezone.now(),
            key=asked.token,
        )
