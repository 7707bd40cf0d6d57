"""Links by which somebody chooses a new password. They are handed over, never sent or kept.

A link carries a signed token. It works once, for `PASSWORD_RESET_TIMEOUT` seconds, and no
longer once the person has signed in again or has another password.
"""

from collections.abc import Iterable
from datetime import datetime, timedelta

from django.conf import settings
from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.http import Http404, HttpRequest
from django.urls import reverse
from django.utils import timezone
from django.utils.http import urlsafe_base64_decode, urlsafe_base64_encode
from django.views.decorators.debug import sensitive_variables

from course.cohorts.access import teaches
from course.cohorts.agreeing import CLOSED, SUBJECT, spend_agreement
from course.cohorts.link_tokens import LINK_TOKENS
from course.cohorts.models import Cohort, Membership, Person, ResetLink
from course.cohorts.passwords import set_password
from course.cohorts.telling import tell
from course.letters import write_to


class LinkSpentError(Exception):
    """The link was used before, or is too old, or was never made."""


def make_reset_link(maker: Person, person: Person, request: HttpRequest) -> str:
    """The address to hand to the person, who is told. That it was made is recorded; it is not.

    An instructor makes one for the learners they teach, where all others who teach them agree;
    an administrator for anybody. Others, and links for others, are 404, as if the person did not
    exist.
    """
    if not maker.is_administrator and not teaches(maker, person):
        raise Http404
    if not person.is_active:
        raise PermissionDenied(CLOSED)
    with transaction.atomic():
        if not maker.is_administrator:
            spend_agreement(maker, person)
        ResetLink.objects.create(made_by=maker, for_person=person)
        if maker != person:
            tell(person, told(maker), SUBJECT)
    return link_of(person, request)


def told(maker: Person) -> str:
    """What the person reads of a link, who may not have asked for it."""
    return (
        f"{maker} has made a link by which a new password can be chosen for your account. If you "
        "did not ask for it, change your password: no link that was made before works then."
    )


def make_first_links(
    maker: Person, people: Iterable[Person], request: HttpRequest
) -> list[tuple[Person, str]]:
    """Each of `waiting_among` the people, with a link to choose a password.

    As many as there are, in a constant number of queries. They were told of it when the account
    was made.
    """
    waiting = waiting_among(maker, people)
    made = [ResetLink(made_by=maker, for_person=person) for person in waiting]
    ResetLink.objects.bulk_create(made)
    return [(person, link_of(person, request)) for person in waiting]


def waiting_among(maker: Person, people: Iterable[Person]) -> list[Person]:
    """Those who never chose a password, and whom the maker teaches and nobody else does."""
    pks = [person.pk for person in people if not person.has_usable_password()]
    taught = Cohort.objects.taught_by(maker)
    elsewhere = Membership.objects.filter(person__in=pks).exclude(cohort__in=taught)
    own = Person.objects.filter(pk__in=pks, memberships__cohort__in=taught, is_active=True)
    return list(own.exclude(memberships__in=elsewhere).distinct().order_by("name", "pk"))


def link_of(person: Person, request: HttpRequest) -> str:
    uid = urlsafe_base64_encode(str(person.pk).encode())
    path = reverse("new-password", args=[uid, LINK_TOKENS.make_token(person)])
    return request.build_absolute_uri(path)


def ends() -> datetime:
    """Until when a link that is made now works."""
    return timezone.now() + timedelta(seconds=settings.PASSWORD_RESET_TIMEOUT)


def person_of_link(uid: str, token: str) -> Person:
    """Whose password the link sets. Raises `LinkSpentError`."""
    person = Person.objects.filter(pk=pk_of(uid), is_active=True).first()
    if person is None or not LINK_TOKENS.check_token(person, token):
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
        write_to(person, "Your new password", "A new password was chosen for you, by a link.")
    return person
