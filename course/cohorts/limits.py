"""What is limited: passwords, joining codes, codes of cards and new accounts.

`PACES` in the settings has the figures. What was typed is not kept: a key is a digest under
the site's secret.
"""

from datetime import timedelta

from django.conf import settings
from django.http import HttpRequest
from django.utils.crypto import salted_hmac

from course.cohorts import known_browser
from course.cohorts.addresses import address_of
from course.cohorts.models import Person
from course.cohorts.throttle import Limit, forget


def limit_of(kind: str, subject: str, *, about: str = "") -> Limit:
    at_once, seconds = settings.PACES[kind]
    return Limit(digest(kind, subject), at_once, timedelta(seconds=seconds), about)


def digest(kind: str, subject: str) -> str:
    return salted_hmac(f"throttle.{kind}", subject, algorithm="sha256").hexdigest()


def password_limits(request: HttpRequest, sign_in_name: str) -> list[Limit]:
    """What a password that is tried on an account counts for, the account's own limits last.

    Whether there is such an account or not. What is tried in a browser that has signed in to it
    before counts for that browser alone: nobody else's tries can keep it out. Other tries count
    for the address, on whatever accounts; for the account, from whatever addresses; and for the
    two together, which is where somebody who guesses is slowed down first.
    """
    name = Person.normalize_username(sign_in_name)
    about = digest("account", name)
    browser = browser_in_use(request, name)
    if browser:
        return [limit_of("known browser", f"{browser} {name}", about=about)]
    address = address_of(request)
    return [
        limit_of("address", address),
        limit_of("account", name, about=about),
        limit_of("account and address", f"{address} {name}", about=about),
    ]


def browser_in_use(request: HttpRequest, name: str) -> str:
    """A browser that has signed in to the account before, or is signed in now; or nothing."""
    if isinstance(request.user, Person) and request.user.sign_in_name == name:
        return "signed in"
    return known_browser.of(request, name)


def forget_failures(sign_in_name: str) -> None:
    """Forget all passwords that were tried on this account, from wherever."""
    forget(digest("account", Person.normalize_username(sign_in_name)))


def code_limit(request: HttpRequest) -> Limit:
    """Joining codes tried by somebody who is signed in, or else from one address.

    Who guesses from an address slows down all its strangers, so the pace is short: a right code
    gets in within seconds. Guessing stays hopeless: there are 28 ** 8 codes, 380,000 million, and
    at five a second it takes 48 years until one of a site's 50 cohorts may be expected.
    """
    if isinstance(request.user, Person):
        return limit_of("code by person", str(request.user.pk))
    return limit_of("code", address_of(request))


def card_limit(request: HttpRequest) -> Limit:
    """Codes of bench cards tried from one address."""
    return limit_of("card", address_of(request))


def new_account_limit(request: HttpRequest) -> Limit:
    """Accounts made from one address, which may be that of a whole classroom."""
    return limit_of("new account", address_of(request))
