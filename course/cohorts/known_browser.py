"""Which accounts a browser has signed in to.

A signed cookie says so, and stays when somebody signs out. It lets nobody in: it only has the
passwords that are tried in this browser counted apart from everybody else's. A browser of the
workshop is many people's, so it names several accounts; whose they are can't be read from it.
"""

import secrets
from typing import NamedTuple

from django.conf import settings
from django.core import signing
from django.http import HttpRequest, HttpResponse
from django.utils.crypto import salted_hmac

from course.cohorts.models import Person

NAME = "known"
SALT = "known browser"
KEPT = 400 * 24 * 3600  # seconds; no browser keeps a cookie for longer
MOST = 40  # accounts, the latest


class Browser(NamedTuple):
    """A browser by a random name, and the marks of its accounts."""

    name: str
    accounts: list[str]


def of(request: HttpRequest, sign_in_name: str) -> str:
    """The browser's own name, if it has signed in to this account; otherwise nothing."""
    browser = read(request)
    return browser.name if mark(sign_in_name) in browser.accounts else ""


def remember(request: HttpRequest, response: HttpResponse, person: Person) -> HttpResponse:
    """Have the browser that gets the response know this account from now on."""
    browser, own = read(request), mark(person.sign_in_name)
    accounts = [own, *(each for each in browser.accounts if each != own)][:MOST]
    response.set_cookie(
        NAME,
        signing.dumps([browser.name, accounts], salt=SALT),
        max_age=KEPT,
        secure=settings.SESSION_COOKIE_SECURE,
        httponly=True,
        samesite="Lax",
    )
    return response


def read(request: HttpRequest) -> Browser:
    """What the cookie says; a new browser where there is none that the site has signed."""
    try:
        return Browser(*signing.loads(request.COOKIES.get(NAME, ""), salt=SALT))
    except signing.BadSignature:
        return Browser(secrets.token_urlsafe(12), [])


def mark(sign_in_name: str) -> str:
    name = Person.normalize_username(sign_in_name)
    return salted_hmac(SALT, name, algorithm="sha256").hexdigest()[:16]
