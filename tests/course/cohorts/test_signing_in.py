"""In at the door, and how often one may knock."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from threading import Barrier
from typing import Any

import pytest
from django.contrib.auth import hashers
from django.db import connection
from django.test import Client
from django.urls import reverse
from django.utils import timezone
from pytest_django import Settings

from course.cohorts.models import Person, Tries
from course.cohorts.views.signing_in import REFUSED
from course.cohorts.visible import UNSEEN
from tests.pages import heading, refusals, texts
from tests.people import PASSWORD, PersonFactory

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]


def sign_in(
    client: Client, name: str, password: str, address: str = "192.0.2.1"
) -> tuple[int, list[str]]:
    """The status, and what the page says is wrong."""
    response = sent(client, name, password, address)
    return response.status_code, refusals(response)


def sent(client: Client, name: str, password: str, address: str = "192.0.2.1") -> Any:
    fields = {"sign_in_name": name, "password": password}
    return client.post(reverse("sign-in"), fields, REMOTE_ADDR=address)


def signed_in(client: Client) -> bool:
    return client.get(reverse("account")).status_code == 200


@pytest.mark.parametrize("name", ["mina", "Mina", "  MINA "])
def test_sign_in_takes_any_spelling_of_the_name(client: Client, mina: Person, name: str) -> None:
    sign_in(client, name, PASSWORD)

    assert signed_in(client)


@pytest.mark.parametrize(
    ("name", "password"),
    [
        ("mina", "not her password"),
        ("mina", PASSWORD.upper()),
        ("mina", f" {PASSWORD} "),
        ("nobody", PASSWORD),
        ("ines' OR 1=1 --", "x"),
        ("mina\u202e", PASSWORD),
    ],
)
def test_unknown_name_and_wrong_password_are_answered_alike(
    client: Client, mina: Person, name: str, password: str
) -> None:
    assert sign_in(client, name, password) == (422, [REFUSED])


def test_closed_account_is_answered_as_an_unknown_one(client: Client, mina: Person) -> None:
    mina.is_active = False
    mina.save()

    assert sign_in(client, "mina", PASSWORD) == (422, [REFUSED])


@pytest.mark.parametrize("name", ["mina", "nobody"])
def test_one_password_is_hashed_for_known_and_unknown_names(
    client: Client, mina: Person, name: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    hashed: list[str] = []
    plain = hashers.MD5PasswordHasher.encode

    def counted(hasher: hashers.MD5PasswordHasher, password: str, salt: str) -> str:
        hashed.append(password)
        return plain(hasher, password, salt)

    monkeypatch.setattr(hashers.MD5PasswordHasher, "encode", counted)
    sign_in(client, name, "wrong")

    assert hashed == ["wrong"]


@pytest.mark.parametrize(
    ("name", "password", "refused"),
    [
        ("", "", ["This is still empty.", "This is still empty."]),
        ("mi\0na", "x", [UNSEEN]),
        ("mina", "x\0", [UNSEEN]),
        ("m" * 10_000, "x", ["Use at most 150 characters. This has 10000."]),
        ("mina", "x" * 10_000, ["Use at most 256 characters. This has 10000."]),
        ("\ufdfa" * 150, "x", ["Use at most 150 characters. This has 2700."]),
    ],
)
def test_odd_input_is_refused_at_its_field(
    client: Client, mina: Person, name: str, password: str, refused: list[str]
) -> None:
    assert sign_in(client, name, password) == (422, refused)


def test_odd_input_costs_no_hashing_and_no_try(client: Client, mina: Person) -> None:
    for _ in range(10):
        sign_in(client, "mina", "x" * 257)

    assert list(Tries.objects.all()) == []


def test_megabytes_of_password_are_refused(client: Client, mina: Person) -> None:
    response = client.post(
        reverse("sign-in"), {"sign_in_name": "mina", "password": "x" * 3_000_000}
    )

    assert (response.status_code, heading(response)) == (400, "That can’t be read")


def test_sixth_try_on_an_account_from_an_address_waits(client: Client, mina: Person) -> None:
    statuses = [sign_in(client, "mina", f"wrong {n}")[0] for n in range(5)]
    response = sent(client, "mina", PASSWORD)

    assert (statuses, response.status_code) == ([422] * 5, 429)
    assert 170 < int(response.headers["Retry-After"]) <= 180


@pytest.mark.parametrize(("seconds", "words"), [(170, "3 minutes"), (60, "1 minute"), (7, "7 s")])
def test_page_says_when_to_try_again(
    client: Client, mina: Person, seconds: int, words: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    for n in range(5):
        sign_in(client, "mina", f"wrong {n}")
    passed = Tries.objects.latest("worn_off_at").worn_off_at - timedelta(minutes=15)
    now = passed + timedelta(seconds=180 - seconds)
    monkeypatch.setattr("django.utils.timezone.now", lambda: now)
    response = sent(client, "mina", PASSWORD)

    (said,) = texts(response, "p", "lede")
    at = timezone.localtime(now + timedelta(seconds=seconds)).strftime("%H:%M:%S")
    assert f"Try again in {words}" in said
    assert f", at {at}. No wait is longer than a few minutes." in said


def test_unknown_account_is_throttled_like_a_known_one(client: Client) -> None:
    statuses = [sign_in(client, "nobody", "x")[0] for _ in range(6)]

    assert statuses == [422] * 5 + [429]


@pytest.mark.usefixtures("stopped_clock")
def test_nobody_elses_wrong_passwords_shut_anybody_out(client: Client, mina: Person) -> None:
    statuses = [sign_in(Client(), "mina", "x", address="192.0.2.66")[0] for _ in range(40)]

    assert statuses[-1] == 429
    assert sign_in(client, "mina", PASSWORD, address="192.0.2.1") == (302, [])


@pytest.mark.usefixtures("stopped_clock")
def test_guesser_spread_over_addresses_is_slowed_down(client: Client, mina: Person) -> None:
    statuses = [sign_in(client, "mina", "x", address=f"192.0.2.{n}")[0] for n in range(200)]

    assert statuses == [422] * 30 + [429] * 170


@pytest.mark.usefixtures("stopped_clock")
def test_address_is_slowed_down_on_whatever_account(client: Client, mina: Person) -> None:
    statuses = [sign_in(client, f"name{n}", "x")[0] for n in range(101)]
    response = sent(client, "mina", PASSWORD)
    elsewhere = sign_in(client, "mina", PASSWORD, address="192.0.2.2")[0]

    assert (statuses, elsewhere) == ([422] * 100 + [429], 302)
    assert int(response.headers["Retry-After"]) <= 10


def test_success_clears_the_failures_of_the_account_there(client: Client, mina: Person) -> None:
    for n in range(4):
        sign_in(Client(), "mina", f"wrong {n}")
    sign_in(Client(), "mina", PASSWORD)
    statuses = [sign_in(Client(), "mina", "x")[0] for _ in range(6)]

    assert statuses == [422] * 5 + [429]


@pytest.mark.usefixtures("stopped_clock")
def test_success_leaves_the_failures_of_the_address(client: Client, mina: Person) -> None:
    for n in range(99):
        sign_in(client, f"name{n}", "x")
    sign_in(client, "mina", PASSWORD)
    statuses = [sign_in(client, f"other{n}", "x")[0] for n in range(2)]

    assert statuses == [422, 429]


@pytest.mark.usefixtures("stopped_clock")
def test_class_behind_one_address_signs_in_after_some_wrong_passwords(db: None) -> None:
    people = [PersonFactory.create() for _ in range(30)]
    wrong = [sign_in(Client(), each.sign_in_name, "x")[0] for each in people for _ in range(3)]
    right = [sign_in(Client(), each.sign_in_name, PASSWORD)[0] for each in people]

    assert (set(wrong), right) == ({422}, [302] * 30)


def test_account_opens_when_a_pace_has_passed(
    client: Client, ines: Person, monkeypatch: pytest.MonkeyPatch
) -> None:
    for n in range(20):
        sign_in(client, "ines", f"wrong {n}")
    later = timezone.now() + timedelta(minutes=3)
    monkeypatch.setattr("django.utils.timezone.now", lambda: later)

    assert sign_in(client, "ines", PASSWORD) == (302, [])


def test_times_written_by_a_wrong_clock_keep_nobody_out(client: Client, mina: Person) -> None:
    for n in range(6):
        sign_in(client, "mina", f"wrong {n}")
    Tries.objects.update(worn_off_at=timezone.now() + timedelta(days=3650))

    assert sign_in(client, "mina", PASSWORD) == (302, [])


@pytest.mark.usefixtures("stopped_clock")
def test_made_up_addresses_do_not_get_round_the_throttle(
    client: Client, settings: Settings
) -> None:
    settings.PROXIES = 1
    statuses = [
        client.post(
            reverse("sign-in"),
            {"sign_in_name": f"name{n}", "password": "x"},
            headers={"X-Forwarded-For": f"203.0.113.{n}, 198.51.100.1"},
        ).status_code
        for n in range(101)
    ]

    assert statuses == [422] * 100 + [429]


@pytest.mark.django_db(transaction=True)
def test_passwords_tried_at_once_are_all_counted(mina: Person) -> None:
    start = Barrier(12)

    def one_try(number: int) -> int:
        start.wait()
        try:
            return sign_in(Client(), "mina", f"wrong {number}")[0]
        finally:
            connection.close()

    with ThreadPoolExecutor(12) as pool:
        statuses = sorted(pool.map(one_try, range(12)))

    assert statuses == [422] * 5 + [429] * 7


def test_page_wanted_is_kept_through_a_wrong_password(client: Client, mina: Person) -> None:
    fields = {"sign_in_name": "mina", "password": "x", "next": "/lessons/"}
    response = client.post(reverse("sign-in"), fields)

    assert response.context["next"] == "/lessons/"


def test_password_is_not_sent_back(client: Client, mina: Person) -> None:
    fields = {"sign_in_name": "mina", "password": "a wrong one"}
    response = client.post(reverse("sign-in"), fields)

    assert "a wrong one" not in response.content.decode()


def test_whoever_is_signed_in_needs_no_door(mina: Person, client_of: ClientOf) -> None:
    response = client_of(mina).get(reverse("sign-in"), {"next": "/record/"})

    assert response.headers["Location"] == "/record/"


def test_signing_in_gives_the_session_a_new_key(client: Client, mina: Person) -> None:
    session = client.session
    session["seen"] = True
    session.save()
    before = session.session_key
    sign_in(client, "mina", PASSWORD)

    assert client.session.session_key != before


def test_sign_out_ends_the_session(mina: Person, client_of: ClientOf) -> None:
    client = client_of(mina)
    response = client.post(reverse("sign-out"))

    assert (response.headers["Location"], signed_in(client)) == ("/", False)


def test_form_from_an_old_page_is_refused_kindly(mina: Person) -> None:
    client = Client(enforce_csrf_checks=True)
    fields = {"sign_in_name": "mina", "password": PASSWORD}
    response = client.post(reverse("sign-in"), fields)

    assert (response.status_code, heading(response)) == (403, "The page was too old")


def test_sign_in_page_is_not_cached(client: Client, db: None) -> None:
    response = client.get(reverse("sign-in"))

    assert "no-store" in response.headers["Cache-Control"]


def test_link_to_signing_out_signs_nobody_out(mina: Person, client_of: ClientOf) -> None:
    page = client_of(mina).get(reverse("sign-out"), follow=True)

    assert page.redirect_chain == [(reverse("today"), 302)]
    assert "Mina Tarrant" in texts(page, "a")
