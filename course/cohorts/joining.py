"""Joining codes, and what is done with them."""

import unicodedata
from datetime import date, datetime, time, timedelta

from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.http import HttpRequest
from django.utils import timezone

from course.cohorts import throttle
from course.cohorts.equipping import usual_bench_of
from course.cohorts.limits import code_limit
from course.cohorts.models import Cohort, Membership, Person, new_join_code

ONLY_LEARNERS = (
    "Only learners join a cohort. Which cohorts an instructor teaches, an administrator decides."
)


UNKNOWN = "No cohort has this code. Check it with your instructor; it may have been renewed."


class UnknownCodeError(Exception):
    """No cohort can be joined by this code; the text says why, to whoever typed it."""

    def __init__(self, sentence: str = UNKNOWN) -> None:
        super().__init__(sentence)


class NameInUseError(Exception):
    """The instructor already teaches a cohort of this name."""


def read_code(text: str) -> str:
    """The code as it is stored, however it was typed: "bcdf-ghjk" is BCDFGHJK."""
    plain = unicodedata.normalize("NFKC", text).upper()
    return "".join(letter for letter in plain if letter.isalnum())


def cohort_of_code(request: HttpRequest, code: str) -> Cohort:
    """The cohort that this code opens. Unknown codes are counted: guessing ends soon.

    Raises `UnknownCodeError`, also where the code has ended or the cohort is archived.
    """
    limit = code_limit(request)
    throttle.count_try(limit)
    cohort = Cohort.objects.filter(join_code=read_code(code)).first()
    if cohort is None:
        raise UnknownCodeError
    throttle.give_back(limit)
    refuse_ended(cohort)
    return cohort


def refuse_ended(cohort: Cohort) -> None:
    if cohort.is_archived:
        raise UnknownCodeError(f"{cohort} is finished: nobody joins it any more.")
    if cohort.join_code_expires_at and cohort.code_has_ended:
        ended = timezone.localtime(cohort.join_code_expires_at - timedelta(seconds=1))
        raise UnknownCodeError(
            f"This code worked until {ended:%-d %B %Y}. Ask your instructor for a new one."
        )


def join(person: Person, cohort: Cohort) -> bool:
    """Give a learner a place in the cohort. False if they had one already."""
    if not person.is_learner:
        raise PermissionDenied(ONLY_LEARNERS)
    _, new = Membership.objects.get_or_create(cohort=cohort, person=person)
    return new


def start_cohort(instructor: Person, name: str) -> Cohort:
    """A new cohort taught by the instructor. Sending the form twice makes one cohort."""
    if not instructor.is_instructor:
        raise PermissionDenied("Only instructors start a cohort.")
    with transaction.atomic():
        Person.objects.select_for_update().get(pk=instructor.pk)
        if instructor.taught_cohorts.filter(name__iexact=name).exists():
            raise NameInUseError
        cohort = Cohort.objects.create(name=name, bench=usual_bench_of(instructor))
        cohort.instructors.add(instructor)
    return cohort


def renew_code(cohort: Cohort) -> None:
    """A new joining code. The old one, and links made with it, stop working.

    An end that has passed was the old code's; one that is to come stays.
    """
    cohort.join_code = new_join_code()
    if cohort.code_has_ended:
        cohort.join_code_expires_at = None
    cohort.save(update_fields=["join_code", "join_code_expires_at"])


def end_code(cohort: Cohort, last_day: date | None) -> None:
    """Let the code work to the end of this day, where the workshop is; None for ever."""
    after = last_day + timedelta(days=1) if last_day else None
    cohort.join_code_expires_at = (
        timezone.make_aware(datetime.combine(after, time.min)) if after else None
    )
    cohort.save(update_fields=["join_code_expires_at"])
