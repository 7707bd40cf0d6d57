"""A browser that somebody has signed in with: others' wrong passwords don't keep them out of it."""

from collections.abc import Callable
from contextlib import suppress
from http.cookies import Morsel

import pytest
from django.contrib.auth.models import AnonymousUser
from django.core import signing
from django.test import Client, RequestFactory
from django.urls import reverse
from pytest_django import Settings

from course.cohorts import known_browser
from course.cohorts.models import Cohort, Person
from course.cohorts.passwords import person_signing_in
from course.cohorts.throttle import TooManyTriesError
from tests.people import PASSWORD, learner

pytestmark = [pytest.mark.django_db, pytest.mark.usefixtures("stopped_clock")]

ClientOf = Callable[[Person], Client]


def sign_in(client: Client, name: str, password: str = PASSWORD) -> int:
    """All from one address."""
    fields = {"sign_in_name": name, "password": password}
    return client.post(reverse("sign-in"), fields).status_code


def tire(name: str) -> None:
    """Use up the tries of the account and of the address, as wrong passwords do."""
    request = RequestFactory().post(reverse("sign-in"))
    request.user = AnonymousUser()
    for tried in [name] * 5 + [f"name{n}" for n in range(100)]:
        with suppress(TooManyTriesError):
            person_signing_in(request, tried, "wrong")


@pytest.fixture
def hers(client: Client, mina: Person) -> Client:
    """A browser in which Mina has signed in, and out again."""
    sign_in(client, "mina")
    client.post(reverse("sign-out"))
    return client


def cookie_of(client: Client) -> "Morsel[str]":
    return client.cookies[known_browser.NAME]


def test_right_password_is_let_in_from_a_known_browser_only(hers: Client) -> None:
    tire("mina")

    assert (sign_in(Client(), "mina"), sign_in(hers, "mina")) == (429, 302)


def test_browser_is_known_to_several_people(hers: Client, tom: Person) -> None:
    sign_in(hers, "tom")
    hers.post(reverse("sign-out"))
    tire("mina")
    tire("tom")

    assert [sign_in(hers, name) for name in ("mina", "tom")] == [302, 302]


def test_new_account_and_new_password_make_the_browser_known(
    client: Client, mina: Person, client_of: ClientOf
) -> None:
    words = {"name": "Peg Orrin", "sign_in_name": "peg"}
    twice = {"new_password": "leader-black-bars", "again": "leader-black-bars"}
    client.post(reverse("new-account"), words | twice)
    client.post(reverse("sign-out"))
    tire("peg")

    assert sign_in(client, "peg", "leader-black-bars") == 302


def test_cookie_is_no_credential(hers: Client) -> None:
    assert hers.get(reverse("record")).status_code == 302
    assert sign_in(hers, "mina", "wrong") == 422


def test_cookie_of_one_account_is_nothing_for_another(hers: Client, tom: Person) -> None:
    tire("tom")

    assert sign_in(hers, "tom") == 429


def test_guessing_in_a_known_browser_is_slowed_down(hers: Client) -> None:
    statuses = [sign_in(hers, "mina", f"wrong {n}") for n in range(11)]

    assert statuses == [422] * 10 + [429]


def test_guessing_in_a_known_browser_leaves_others_alone(hers: Client) -> None:
    for n in range(20):
        sign_in(hers, "mina", f"wrong {n}")

    assert sign_in(Client(), "mina") == 302


def test_copies_of_a_known_browser_are_slowed_down_together(hers: Client) -> None:
    copies = []
    for _ in range(11):
        copies.append(Client())
        copies[-1].cookies[known_browser.NAME] = cookie_of(hers).value
    statuses = [sign_in(each, "mina", "wrong") for each in copies]

    assert statuses == [422] * 10 + [429]


@pytest.mark.parametrize("salt", ["", "x", "another salt"])
def test_cookie_that_the_site_did_not_sign_says_nothing(mina: Person, salt: str) -> None:
    tire("mina")
    client = Client()
    forged = signing.dumps(["a", [known_browser.mark("mina")]], salt=salt)
    client.cookies[known_browser.NAME] = forged if len(salt) > 1 else salt

    assert sign_in(client, "mina") == 429


def test_cookie_does_not_say_whose_accounts_it_names(hers: Client) -> None:
    _, accounts = signing.loads(cookie_of(hers).value, salt=known_browser.SALT)

    assert [(len(each), set(each) <= set("0123456789abcdef")) for each in accounts] == [(16, True)]


def test_cookie_is_for_the_site_alone(client: Client, mina: Person, settings: Settings) -> None:
    settings.SESSION_COOKIE_SECURE = True
    sign_in(client, "mina")
    cookie = cookie_of(client)

    assert (cookie["httponly"], cookie["secure"], cookie["samesite"]) == (True, True, "Lax")
    assert cookie["max-age"] == 400 * 24 * 3600


def test_cookie_stays_small_in_a_browser_of_many(client: Client, harbour: Cohort) -> None:
    for number in range(45):
        learner(f"Learner{number} Orrin", harbour)
        sign_in(client, f"learner{number}")
        client.post(reverse("sign-out"))
    _, accounts = signing.loads(cookie_of(client).value, salt=known_browser.SALT)

    assert (len(accounts), len(cookie_of(client).value) < 1500) == (40, True)
    assert accounts[0] == known_browser.mark("learner44")
