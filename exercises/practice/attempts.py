"""The verbs of practice: put a question to somebody, take their answer."""

import secrets
from collections.abc import Collection
from datetime import datetime
from typing import Any

from django.db import IntegrityError, transaction
from django.utils import timezone

from course.cohorts.equipping import bench_of
from course.cohorts.models import Person
from exercises.drills.asks import AnswerRefused, SentPicture
from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.drills.setting.settings import Settings
from exercises.models import Asked, Attempt
from exercises.models.desk import kind_now
from exercises.practice.counting import count_answer
from exercises.practice.haste import refuse_haste
from exercises.practice.uploads import discard, keep, tie
from exercises.signal.photographs import Photograph
from exercises.standing.summaries import summary_of, take_in
from exercises.standing.working_out import moments

SEEDS = 2**53  # every seed survives a round trip through JSON; so many never come twice
DRAWS = 25


class OutdatedError(Exception):
    """The question was made by an earlier revision of its kind and can't be judged now."""


def ask(
    person: Person,
    drill: Kind,
    *,
    seed: int | None = None,
    skills: Collection[str] = (),
    now: datetime | None = None,
) -> Asked:
    """The person's open question of this drill, or a new one, on one of the skills if told.

    A new one is set at their own bench.
    Asking twice, at the same moment too, gives the same question.
    """
    waiting = open_question(person, drill)
    if waiting:
        return describe(waiting) if person.in_words else waiting
    settings = bench_of(person).as_settings()
    if seed is None:
        seed, question = new_question(drill, skills, settings)
    else:
        question = drill.make(seed, settings)
    made = new_asked(person, drill, seed, question, now)
    with transaction.atomic():
        hold(person)
        waiting = open_question(person, drill)  # another request may have asked it meanwhile
        return waiting or put(made)


def open_question(person: Person, drill: Kind) -> Asked | None:
    """What waits of this drill for the person's answer."""
    latest = Asked.objects.latest_of(person, drill.slug).select_related("attempt").first()
    return latest if latest and latest.waits() else None


def hold(person: Person) -> None:
    """Till the transaction ends, no other request puts a question to them or begins a sitting."""
    Person.objects.select_for_update(no_key=True).get(pk=person.pk)


def put(asked: Asked) -> Asked:
    """Make it the drill's open question; one that waited is put away. The person is held."""
    Asked.objects.latest_of(asked.person, asked.drill).exclude(pk=asked.pk).update(latest=False)
    asked.latest = True
    asked.save()
    return asked


def new_asked(
    person: Person, drill: Kind, seed: int, question: Question, now: datetime | None
) -> Asked:
    """The question as it is put to the person; not saved yet."""
    return Asked(
        person=person,
        drill=drill.slug,
        own_id=drill.own,
        revision=drill.revision,
        seed=seed,
        question=question.as_json(),
        described=person.in_words and bool(question.media),
        asked_at=now or timezone.now(),
    )


def new_question(drill: Kind, skills: Collection[str], settings: Settings) -> tuple[int, Question]:
    """A fresh seed and its question: on one of the skills, where the drill soon has one."""
    for _ in range(DRAWS):
        seed = secrets.randbelow(SEEDS)
        question = drill.make(seed, settings)
        if not skills or question.skill in skills:
            break
    return seed, question


def question_like(attempt: Attempt, drill: Kind) -> tuple[int, Question]:
    """A fresh one of the attempt's situation; of its skill at least, where there is none such."""
    settings = bench_of(attempt.person).as_settings()
    for _ in range(DRAWS):
        seed, question = new_question(drill, [attempt.skill], settings)
        if question.situation == attempt.situation:
            break
    return seed, question


def ask_again(attempt: Attempt, *, now: datetime | None = None) -> Asked:
    """A new question of the attempt's situation in its stead; asked twice, the same one.

    It becomes the drill's open question, of the same sitting: one that waited is put away. Raises
    `OutdatedError` where the drill is asked no more.
    """
    found = Asked.objects.filter(again=attempt).first()
    if found is not None:
        return found
    drill = kind_now(attempt.drill)
    if drill is None:
        raise OutdatedError
    seed, question = question_like(attempt, drill)
    made = new_asked(attempt.person, drill, seed, question, now)
    made.again, made.sitting_id = attempt, attempt.asked.sitting_id
    with transaction.atomic():
        hold(attempt.person)
        found = Asked.objects.filter(again=attempt).first()
        return found or put(made)


def describe(asked: Asked) -> Asked:
    """Ask the same question in words, if it shows or plays anything; not once it is answered."""
    if asked.waits() and asked.as_question().media and not asked.described:
        asked.described = True
        asked.save(update_fields=["described"])
    return asked


def submit(
    asked: Asked,
    answer: dict[str, Any],
    *,
    photograph: Photograph | None = None,
    now: datetime | None = None,
) -> Attempt:
    """Judge the answer and keep it, once; with the `photograph`, where it is one.

    The last answer of a sitting ends it. A second submission of the same question, in parallel
    too, changes nothing and gives the first one's attempt. Having written nothing, raises
    `TooFastError` where the person has given a minute's answers already, and `OutdatedError`
    where the kind has moved on since it asked.
    """
    now = now or timezone.now()
    known = summary_of(asked.person)
    refuse_haste(asked, moments(known), now)
    if not asked.can_be_judged():
        raise OutdatedError
    attempt = judged(asked, answer, photograph, now)
    name = keep(photograph) if photograph else ""
    try:
        with transaction.atomic():
            attempt.save(force_insert=True)
            if photograph:
                tie(name, photograph, attempt)
            take_in(attempt, known, first=getattr(asked, "first", False))
            if asked.sitting:
                count_answer(asked.sitting, now)
    except IntegrityError:  # a question has one attempt, and the key is its token
        if photograph:
            discard(name)
        return Attempt.objects.get(asked=asked)
    attempt.remember_no_outcome()
    return attempt


def judged(
    asked: Asked, answer: dict[str, Any], photograph: Photograph | None, now: datetime
) -> Attempt:
    """The answer with its verdict; not saved yet."""
    question = asked.as_question()
    refuse_without_its_picture(question, answer, photograph)
    verdict = asked.kind.grade(question, answer).as_told()
    return Attempt(
        asked=asked,
        person_id=asked.person_id,
        drill=asked.drill,
        own=asked.own,
        skill=question.skill,
        situation=question.situation,
        seed=asked.seed,
        revision=asked.revision,
        answer=answer,
        right=verdict.right,
        score=verdict.score,
        described=asked.described,
        pending=verdict.pending,
        misconceptions=list(verdict.misconceptions),
        feedback=verdict.feedback,
        asked_at=asked.asked_at,
        answered_at=now,
        key=asked.token,
    )


def refuse_without_its_picture(
    question: Question, answer: dict[str, Any], photograph: Photograph | None
) -> None:
    """AnswerRefused where a picture is asked for and another one, or none, is there to keep."""
    wanted = [answer.get(ask.name) for ask in question.asks if isinstance(ask, SentPicture)]
    if wanted != ([photograph.digest] if photograph else []):
        raise AnswerRefused("The picture is missing. Send it again.")
