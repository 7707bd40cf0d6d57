"""The verbs of a roster: send it, and write what its preview has shown."""

from collections import Counter
from dataclasses import dataclass

from django.core.exceptions import PermissionDenied
from django.db import IntegrityError, transaction
from django.utils import timezone

from course.cohorts.models import Cohort, Membership, Notice, Person, RosterUpload
from course.cohorts.roster.fates import Fate, What, digest_of
from course.cohorts.roster.reckoning import fates_of
from course.cohorts.roster.sheet import decoded, read
from course.cohorts.roster.upload import purge


class ChangedError(Exception):
    """Something has changed since the preview: it shows other fates now."""


def send(instructor: Person, content: bytes, cohort: Cohort | None) -> RosterUpload:
    """Keep a roster until it is written, for a day. Raises `RosterError` if it is no good."""
    if not instructor.is_instructor:
        raise PermissionDenied("Only instructors send a roster.")
    text = decoded(content)
    read(text)
    purge(timezone.now())
    return RosterUpload.objects.create(person=instructor, cohort=cohort, text=text)


def write(upload: RosterUpload, seen: str) -> None:
    """Do what the preview with this digest has shown: all of it or nothing, and once.

    Wrong lines are left out. Raises `ChangedError`.
    """
    try:
        with transaction.atomic():
            locked = RosterUpload.objects.select_for_update().get(pk=upload.pk)
            if locked.written_at is None:
                write_locked(locked, seen)
    except IntegrityError as error:  # a sign-in name was taken meanwhile
        raise ChangedError from error
    upload.refresh_from_db()


def write_locked(upload: RosterUpload, seen: str) -> None:
    # Nobody else writes a roster into the same cohorts meanwhile.
    Cohort.objects.taught_by(upload.person).locked()
    fates = fates_of(upload.person, upload.text, upload.cohort)
    if digest_of(fates) != seen:
        raise ChangedError
    upload.made = [person.pk for person in Writing(upload.person, fates).write()]
    upload.counts = Counter(str(fate.what) for fate in fates)
    upload.written_at, upload.text = timezone.now(), ""
    upload.save()


@dataclass(frozen=True)
class Writing:
    """The changes of a roster, in a constant number of queries."""

    instructor: Person
    fates: list[Fate]

    def write(self) -> list[Person]:
        """Do all; returns the people who are new."""
        made = Person.objects.bulk_create(self.account_of(fate) for fate in self.of(What.NEW))
        people = {person.sign_in_name: person for person in made}
        people |= {fate.person.sign_in_name: fate.person for fate in self.fates if fate.person}
        changing = [(fate, people[fate.sign_in_name]) for fate in self.fates if fate.changes]
        self.leave()
        Membership.objects.bulk_create(
            [Membership(cohort=fate.cohort, person=person) for fate, person in changing],
            ignore_conflicts=True,  # somebody who joined by the code at this moment
        )
        Notice.objects.bulk_create(
            Notice(person=person, text=self.told(fate)) for fate, person in changing
        )
        return made

    def of(self, *whats: What) -> list[Fate]:
        return [fate for fate in self.fates if fate.what in whats]

    def leave(self) -> None:
        for origin in {fate.leaves for fate in self.of(What.MOVES) if fate.leaves}:
            gone = [fate.person for fate in self.of(What.MOVES) if fate.leaves == origin]
            Membership.objects.filter(cohort=origin, person__in=gone).delete()

    def account_of(self, fate: Fate) -> Person:
        person = Person(sign_in_name=fate.sign_in_name, name=fate.line.name, email=fate.line.email)
        person.set_unusable_password()
        return person

    def told(self, fate: Fate) -> str:
        """What the learner reads of it on Today."""
        if fate.what == What.NEW:
            return (
                f"{self.instructor} made this account for you, in {fate.cohort}, and a link to "
                "choose its password. Its instructors see your name, e-mail and practice."
            )
        return moved_sentence(self.instructor, fate.leaves, fate.cohort)


def moved_sentence(instructor: Person, origin: Cohort | None, target: Cohort | None) -> str:
    if origin is None:
        return f"{instructor} put you into {target}. Its instructors see your practice."
    return f"{instructor} moved you from {origin} to {target}. All your answers are kept."
