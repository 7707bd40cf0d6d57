"""Making an account and changing what it says."""

from datetime import timedelta

from django.conf import settings
from django.core.exceptions import PermissionDenied
from django.db import IntegrityError, transaction
from django.http import HttpRequest
from django.utils import timezone
from django.views.decorators.debug import sensitive_variables

from course.cohorts import throttle
from course.cohorts.joining import join
from course.cohorts.limits import new_account_limit
from course.cohorts.models import Cohort, Person


class NameTakenError(Exception):
    """Somebody already signs in with this name."""


@sensitive_variables("password")
def make_account(
    request: HttpRequest,
    *,
    sign_in_name: str,
    name: str,
    email: str,
    password: str,
    cohort: Cohort | None,
) -> Person:
    """A new learner, with a place in the cohort if one is given.

    Without a cohort only where the site allows self-study: otherwise `PermissionDenied`.
    """
    if cohort is None and not settings.SELF_STUDY:
        raise PermissionDenied("An account needs a cohort’s joining code here.")
    throttle.count_try(new_account_limit(request))
    try:
        with transaction.atomic():
            person = Person.objects.create_user(sign_in_name, password, name=name, email=email)
            if cohort:
                join(person, cohort)
    except IntegrityError as error:
        raise NameTakenError from error
    return person


def just_made(sign_in_name: str) -> bool:
    """Was the account of this name made within the last minute?"""
    minute, now = timedelta(minutes=1), timezone.now()
    lately = (now - minute, now + minute)  # the clock may have been ahead
    return Person.objects.filter(sign_in_name=sign_in_name, joined_at__range=lately).exists()


def choose_words(person: Person, *, in_words: bool) -> None:
    """Have what drills show and play described in words from now on, or no longer."""
    person.in_words = in_words
    person.save(update_fields=["in_words"])
