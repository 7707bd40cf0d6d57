"""Joining codes, and what is done with them."""

import unicodedata

from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.http import HttpRequest

from course.cohorts import throttle
from course.cohorts.equipping import usual_bench_of
from course.cohorts.models import Cohort, Membership, Person, new_join_code

ONLY_LEARNERS = (
    "Only learners join a cohort. Which cohorts an instructor teaches, an administrator decides."
)


class UnknownCodeError(Exception):
    """No cohort has this joining code."""


class NameInUseError(Exception):
    """The instructor already teaches a cohort of this name."""


def read_code(text: str) -> str:
    """The code as it is stored, however it was typed: "bcdf-ghjk" is BCDFGHJK."""
    plain = unicodedata.normalize("NFKC", text).upper()
    return "".join(letter for letter in plain if letter.isalnum())


def cohort_of_code(request: HttpRequest, code: str) -> Cohort:
    """The cohort that this code opens. Unknown codes are counted: guessing ends soon."""
    limit = throttle.code_limit(request)
    throttle.count_try(limit)
    cohort = Cohort.objects.filter(join_code=read_code(code)).first()
    if cohort is None:
        raise UnknownCodeError
    throttle.give_back(limit)
    return cohort


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
    """A new joining code. The old one, and links made with it, stop working."""
    cohort.join_code = new_join_code()
    cohort.save(update_fields=["join_code"])
