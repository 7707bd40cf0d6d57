"""The verbs of the drill desk: write a drill, revise it, publish it, retire it."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from django.db import IntegrityError, transaction
from django.db.models import Exists, OuterRef, QuerySet
from django.utils import timezone

from course.cohorts.models import Cohort, Membership, Person
from exercises.drills.asks import Json
from exercises.forms.keys import SentBeforeError, first_of
from exercises.models import Asked, OwnDrill, OwnRevision


class NotPublishedError(Exception):
    """It can't be published; the message is a sentence for its author."""


@dataclass(frozen=True, kw_only=True)
class Text:
    """What an instructor wrote; `spec` is what the drill's form makes its question of."""

    title: str
    skill: str
    spec: Json


def write(by: Person, form: str, text: Text, *, key: str, now: datetime | None = None) -> OwnDrill:
    """A new drill with its first revision. The same a second time gives the first one.

    Raises SentBeforeError where the form's key has kept another drill.
    """
    drill = OwnDrill(made_by=by, form=form, key=key)
    try:
        with transaction.atomic():
            drill.save(force_insert=True)
            _revision(drill, 1, by, text, now=now).save()
    except IntegrityError:
        first = first_of(drill, "made_by_id", "form")
        if text_of(first.revisions.get(number=1)) != text:
            raise SentBeforeError from None
        return first
    return drill


def text_of(revision: OwnRevision) -> Text:
    return Text(title=revision.title, skill=revision.skill, spec=revision.spec)


def revise(drill: OwnDrill, by: Person, text: Text) -> OwnRevision:
    """One more revision; the last one, where nothing has changed. Learners see it once published.

    What was answered keeps the revision on which it was answered.
    """
    with transaction.atomic():
        last = _locked(drill).latest
        if text_of(last) == text:
            return last
        made = _revision(drill, last.number + 1, by, text)
        made.save()
    return made


def _revision(
    drill: OwnDrill, number: int, by: Person, text: Text, *, now: datetime | None = None
) -> OwnRevision:
    return OwnRevision(
        drill=drill,
        number=number,
        by=by,
        title=text.title,
        skill=text.skill,
        spec=text.spec,
        at=now or timezone.now(),
    )


def publish(
    drill: OwnDrill, by: Person, cohorts: Iterable[Cohort], *, now: datetime | None = None
) -> None:
    """Ask the last revision of the learners of these cohorts, and of nobody else's.

    Cohorts that the author does not teach are left as they are. Raises NotPublishedError where
    the question has more than one right answer, or the drill is retired.
    """
    with transaction.atomic():
        held = _locked(drill)
        if held.retired_at:
            raise NotPublishedError("It is retired. Write a new one.")
        if not asks_one_thing(held.latest):
            raise NotPublishedError("It has not exactly one right answer. Revise it first.")
        taught = set(Cohort.objects.taught_by(by))
        held.cohorts.remove(*taught.difference(cohorts))
        held.cohorts.add(*taught.intersection(cohorts))
        held.published, held.published_at = held.latest, now or timezone.now()
        held.save(update_fields=["published", "published_at"])
        put_away_for_others(held)


def asks_one_thing(revision: OwnRevision) -> bool:
    """Whether its question has one right answer, or an instructor reads the answers."""
    return next(revision.kind.candidates(0)) is not None


def put_away_for_others(drill: OwnDrill) -> None:
    """Put away what waits of it for people who are asked it no more."""
    places = Membership.objects.filter(person=OuterRef("person"), cohort__in=drill.cohorts.all())
    _waiting(drill).filter(~Exists(places), person__role=Person.Role.LEARNER).update(latest=False)


def retire(drill: OwnDrill, *, now: datetime | None = None) -> None:
    """Ask it no more. Questions that wait are put away, answers stay. Twice is once."""
    with transaction.atomic():
        held = _locked(drill)
        if not held.retired_at:
            held.retired_at = now or timezone.now()
            held.save(update_fields=["retired_at"])
        _waiting(held).update(latest=False)


def _locked(drill: OwnDrill) -> OwnDrill:
    """The drill, which nobody else changes until the transaction ends."""
    return OwnDrill.objects.select_for_update(of=("self",)).get(pk=drill.pk)


def _waiting(drill: OwnDrill) -> QuerySet[Asked]:
    return Asked.objects.open().filter(own__drill=drill)
