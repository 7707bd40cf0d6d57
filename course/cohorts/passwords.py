"""Signing in by password, and setting a new one."""

from django.contrib.auth import authenticate
from django.core.exceptions import ValidationError
from django.http import HttpRequest
from django.views.decorators.debug import sensitive_variables

from course.cohorts import throttle
from course.cohorts.limits import forget_failures, password_limits
from course.cohorts.models import Person

LONGEST = 256


class LongestPasswordValidator:
    """Refuse what nobody types, before it costs the hasher any time."""

    def validate(self, password: str, user: Person | None = None) -> None:
        if len(password) > LONGEST:
            raise ValidationError(
                f"This password is too long. It may have at most {LONGEST} characters.",
                code="password_too_long",
            )

    def get_help_text(self) -> str:
        return f"Your password may have at most {LONGEST} characters."


@sensitive_variables("password")
def person_signing_in(request: HttpRequest, sign_in_name: str, password: str) -> Person | None:
    """Whoever signs in with this name and password; None if nobody does.

    An unknown name, a wrong password and a closed account are one case, and take about the
    same time. Raises `TooManyTriesError` without looking at the password.
    """
    *wider, own = password_limits(request, sign_in_name)
    throttle.count_try(*wider, own)
    person = authenticate(request, username=sign_in_name, password=password)
    if not isinstance(person, Person):
        return None
    throttle.give_back(*wider)
    throttle.clear(own)
    return person


@sensitive_variables("password")
def set_password(person: Person, password: str) -> None:
    """Give the person a new password. Their sessions end; failures to sign in are forgotten."""
    person.set_password(password)
    person.save(update_fields=["password"])
    forget_failures(person.sign_in_name)
