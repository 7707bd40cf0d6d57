"""Making an account, with a code or without."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from threading import Barrier

import pytest
from django.core.exceptions import PermissionDenied
from django.db import connection
from django.test import Client, RequestFactory
from django.urls import reverse
from django.utils import timezone
from pytest_django import Settings

from course.cohorts.accounts import make_account
from course.cohorts.models import Cohort, Membership, Person, Tries
from tests.pages import heading, notices, refusals
from tests.people import PASSWORD

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]
PEG = {
    "name": "Peg Astley",
    "email": "peg@quay-street.example",
    "sign_in_name": "peg",
    "new_password": "leader-black-bars",
    "again": "leader-black-bars",
}
TAKEN = "Someone already signs in with this name. Choose another."


def make(client: Client, **fields: str) -> tuple[int, list[str]]:
    """The status, and what the page says is wrong."""
    response = client.post(reverse("new-account"), PEG | fields)
    return response.status_code, refusals(response)


def who(client: Client) -> Person | None:
    key = client.session.get("_auth_user_id")
    return Person.objects.get(pk=key) if key else None


def test_stranger_makes_an_account_to_study_alone(client: Client) -> None:
    page = client.post(reverse("new-account"), PEG, follow=True)
    peg = Person.objects.get(sign_in_name="peg")

    assert (peg.name, peg.email, peg.role) == ("Peg Astley", PEG["email"], "learner")
    assert (peg.is_staff, peg.is_superuser) == (False, False)
    assert (who(client), list(peg.cohorts.all())) == (peg, [])
    assert notices(page) == ["Your account is made."]


def test_account_with_a_code_has_a_place_in_the_cohort(client: Client, harbour: Cohort) -> None:
    page = client.post(reverse("new-account"), PEG | {"code": harbour.join_code}, follow=True)

    assert list(Person.objects.get(sign_in_name="peg").cohorts.all()) == [harbour]
    assert notices(page) == ["Your account is made, and you have joined Harbour group."]


def test_account_can_make_itself_nothing_but_a_learner(client: Client) -> None:
    make(client, role="administrator", is_superuser="on", is_active="")
    peg = Person.objects.get(sign_in_name="peg")

    assert (peg.role, peg.is_superuser, peg.is_active) == ("learner", False, True)


@pytest.mark.parametrize("name", ["mina", "MINA", " Mina ", "\uff4d\uff49\uff4e\uff41"])
def test_name_of_somebody_else_is_taken(client: Client, mina: Person, name: str) -> None:
    Person.objects.update(joined_at=timezone.now() - timedelta(days=1))

    assert make(client, sign_in_name=name) == (422, [TAKEN])
    assert (who(client), Person.objects.filter(sign_in_name="mina").count()) == (None, 1)


def test_name_taken_is_no_way_to_try_passwords(client: Client, mina: Person) -> None:
    Person.objects.update(joined_at=timezone.now() - timedelta(days=1))
    made = make(client, sign_in_name="mina", new_password=PASSWORD, again=PASSWORD)

    assert (made, who(client)) == ((422, [TAKEN]), None)


def test_form_sent_twice_makes_one_account(client: Client) -> None:
    first, second = Client(), Client()
    make(first)
    make(second)
    peg = Person.objects.get(sign_in_name="peg")

    assert (who(first), who(second)) == (peg, peg)


def test_other_password_for_a_name_just_taken_gets_nowhere(client: Client) -> None:
    make(Client())

    assert make(client, new_password="bars-and-tone-1", again="bars-and-tone-1") == (422, [TAKEN])


@pytest.mark.django_db(transaction=True)
def test_accounts_of_one_name_made_at_once_are_one() -> None:
    start = Barrier(6)

    def one(number: int) -> int:
        password = f"unlike-the-others-{number}"
        start.wait()
        try:
            return make(Client(), new_password=password, again=password)[0]
        finally:
            connection.close()

    with ThreadPoolExecutor(6) as pool:
        statuses = sorted(pool.map(one, range(6)))

    assert statuses == [302] + [422] * 5
    assert Person.objects.count() == 1


@pytest.mark.parametrize(
    ("fields", "refused"),
    [
        ({"name": ""}, "This is still empty."),
        ({"sign_in_name": ""}, "This is still empty."),
        ({"sign_in_name": "peg astley"}, "Use letters, figures and . _ - @ only, without spaces."),
        ({"sign_in_name": "peg\n"}, None),
        ({"sign_in_name": "p" * 151}, "Use at most 150 characters. This has 151."),
        ({"sign_in_name": "\ufdfa"}, "Use letters, figures and . _ - @ only, without spaces."),
        ({"sign_in_name": "<b>"}, "Use letters, figures and . _ - @ only, without spaces."),
        (
            {"email": f"{'p' * 64}@{'e' * 63}.{'e' * 63}.{'e' * 63}.example"},
            "Use at most 254 characters. This has 264.",
        ),
        ({"again": "something-else"}, "The two passwords are not the same. Type both again."),
        (
            {
                "sign_in_name": "blackleader",
                "new_password": "blackleader1",
                "again": "blackleader1",
            },
            "The password is too similar to the sign-in name.",
        ),
    ],
)
def test_account_that_is_no_good_is_not_made(
    client: Client, fields: dict[str, str], refused: str | None
) -> None:
    status, said = make(client, **fields)

    assert (status, said[:1]) == ((422, [refused]) if refused else (302, []))
    assert Person.objects.count() == (0 if refused else 1)


def test_what_was_typed_is_kept_but_for_the_passwords(client: Client) -> None:
    page = client.post(reverse("new-account"), PEG | {"again": "x"})

    form = page.context["form"]
    assert [form["name"].value(), form["sign_in_name"].value()] == ["Peg Astley", "peg"]
    assert PEG["new_password"] not in page.content.decode()


def test_unknown_code_makes_no_account(client: Client) -> None:
    page = client.post(reverse("new-account"), PEG | {"code": "NOTACODE"})

    assert (page.status_code, heading(page)) == (404, "Join a cohort")
    assert Person.objects.count() == 0


def test_site_without_self_study_asks_for_a_code(client: Client, settings: Settings) -> None:
    settings.SELF_STUDY = False
    pages = [client.get(reverse("new-account")), client.post(reverse("new-account"), PEG)]

    assert [page.status_code for page in pages] == [403, 403]
    assert [heading(page) for page in pages] == ["You need a joining code"] * 2
    assert Person.objects.count() == 0


def test_site_without_self_study_makes_no_account_whichever_way_it_is_asked(
    settings: Settings,
) -> None:
    settings.SELF_STUDY = False
    said = {"sign_in_name": "peg", "name": "Peg Astley", "email": "", "password": PASSWORD}

    with pytest.raises(PermissionDenied):
        make_account(RequestFactory().get("/"), **said, cohort=None)


def test_site_without_self_study_takes_a_code(
    client: Client, settings: Settings, harbour: Cohort
) -> None:
    settings.SELF_STUDY = False

    assert make(client, code=harbour.spoken_code) == (302, [])
    assert [person.sign_in_name for person in harbour.learners.all()] == ["peg"]


@pytest.mark.parametrize(
    ("code", "goes_to"),
    [
        ("", "/account/"),
        ("bcdf-ghjk", "/join/BCDFGHJK/"),
        ("/../", "/account/"),
        ("é/é", "/join/%C3%89%C3%89/"),
    ],
)
def test_whoever_has_an_account_is_sent_on(
    mina: Person, client_of: ClientOf, code: str, goes_to: str
) -> None:
    response = client_of(mina).get(reverse("new-account"), {"code": code})

    assert response.headers["Location"] == goes_to


def test_accounts_from_one_address_have_a_limit(client: Client, settings: Settings) -> None:
    settings.PACES = settings.PACES | {"new account": (3, 60)}
    statuses = [make(Client(), sign_in_name=f"peg{n}")[0] for n in range(4)]

    assert (statuses, Person.objects.count()) == ([302] * 3 + [429], 3)


def test_account_leaves_nothing_behind_when_it_cannot_be_made(client: Client, mina: Person) -> None:
    Person.objects.update(joined_at=timezone.now() - timedelta(days=1))
    make(client, sign_in_name="mina")

    assert Tries.objects.count() == 1  # the try alone
    assert Membership.objects.exclude(person=mina).count() == 0
