"""Links by which somebody chooses a new password. They are handed over, never sent or kept.

A link carries a signed token. It works once, for `PASSWORD_RESET_TIMEOUT` seconds, and no
longer once the person has signed in again or has another password.
"""

from collections.abc import Iterable
from datetime import datetime, timedelta

from django.conf import settings
from django.contrib.auth.tokens import default_token_generator
from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.http import Http404, HttpRequest
from django.urls import reverse
from django.utils import timezone
from django.utils.http import urlsafe_base64_decode, urlsafe_base64_encode
from django.views.decorators.debug import sensitive_variables

from course.cohorts.models import Cohort, Person, ResetLink
from course.cohorts.passwords import set_password


class LinkSpentError(Exception):
    """The link was used before, or is too old, or was never made."""


def make_reset_link(maker: Person, person: Person, request: HttpRequest) -> str:
    """The address to hand to the person. That it was made is recorded; the link is not.

    An instructor makes one for the learners they teach, an administrator for anybody.
    Others, and links for others, are 404, as if the person did not exist.
    """
    if not may_make_link(maker, person):
        raise Http404
    if not person.is_active:
        raise PermissionDenied("This account is closed. An administrator can open it again.")
    ResetLink.objects.create(made_by=maker, for_person=person)
    return link_of(person, request)


def make_first_links(
    maker: Person, people: Iterable[Person], request: HttpRequest
) -> list[tuple[Person, str]]:
    """Each of the people who never chose a password, with a link to choose one.

    As many as there are, in a constant number of queries; for accounts that the maker made.
    """
    waiting = [person for person in people if not person.has_usable_password()]
    made = [ResetLink(made_by=maker, for_person=person) for person in waiting]
    ResetLink.objects.bulk_create(made)
    return [(person, link_of(person, request)) for person in waiting]


def link_of(person: Person, request: HttpRequest) -> str:
    uid = urlsafe_base64_encode(str(person.pk).encode())
    path = reverse("new-password", args=[uid, default_token_generator.make_token(person)])
    return request.build_absolute_uri(path)


def ends() -> datetime:
    """Until when a link that is made now works."""
    return timezone.now() + timedelta(seconds=settings.PASSWORD_RESET_TIMEOUT)


def may_make_link(maker: Person, person: Person) -> bool:
    if maker.is_administrator:
        return True
    taught = Cohort.objects.taught_by(maker)
    return person.is_learner and taught.filter(learners=person).exists()


def person_of_link(uid: str, token: str) -> Person:
    """Whose password the link sets. Raises `LinkSpentError`."""
    person = Person.objects.filter(pk=pk_of(uid), is_active=True).first()
    if person is None or not default_token_generator.check_token(person, token):
        raise LinkSpentError
    return person


def pk_of(uid: str) -> int:
    """The person's key, or 0, which is nobody's."""
    try:
        return int(urlsafe_base64_decode(uid).decode("ascii"))
    except ValueError:
        return 0


@sensitive_variables("password")
def use_reset_link(uid: str, token: str, password: str) -> Person:
    """Set the password, once: of two who send it at the same moment, one succeeds."""
    with transaction.atomic():
        # Only where the row is locked can the token be looked at and used up in one go.
        Person.objects.select_for_update().filter(pk=pk_of(uid)).first()
        person = person_of_link(uid, token)
        set_password(person, password)
    return person
