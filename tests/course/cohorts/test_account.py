"""One's own account."""

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
from pytest_django import DjangoAssertNumQueries, Settings

from course.cohorts.accounts import make_account
from course.cohorts.fields import UNSEEN
from course.cohorts.models import Cohort, Membership, Person, Tries
from tests.pages import heading, notices, refusals, texts
from tests.people import PASSWORD, CohortFactory

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


# --- Looking at it ----------------------------------------------------------------


def test_account_shows_what_is_kept(mina: Person, client_of: ClientOf) -> None:
    Person.objects.filter(pk=mina.pk).update(joined_at="2026-03-02T09:00:00Z")
    Membership.objects.filter(person=mina).update(joined_at="2026-03-03T09:00:00Z")
    page = client_of(mina).get(reverse("account"))

    assert texts(page, "dd") == [
        "Mina Tarrant",
        "mina",
        "mina@quay-street.example",
        "learner, since 2 March 2026",
    ]
    assert texts(page, "li")[-1] == "Harbour group, joined on 3 March 2026"


def test_words_are_chosen_and_given_up(solo: Person, client_of: ClientOf) -> None:
    client = client_of(solo)
    chosen = []
    for sent in ({"in_words": "on"}, {}):
        page = client.post(reverse("in-words"), sent, follow=True)
        solo.refresh_from_db()
        chosen.append((solo.in_words, notices(page)))

    assert chosen == [
        (True, ["Pictures and sounds are described in words from now on."]),
        (False, ["Pictures and sounds are shown and played from now on."]),
    ]


def test_words_are_not_chosen_by_a_link(solo: Person, client_of: ClientOf) -> None:
    response = client_of(solo).get(reverse("in-words"), {"in_words": "on"})

    solo.refresh_from_db()
    assert (response["Location"], solo.in_words) == (reverse("account"), False)


def test_account_leaves_nothing_empty(solo: Person, client_of: ClientOf) -> None:
    solo.email = ""
    solo.save()
    page = client_of(solo).get(reverse("account"))

    assert texts(page, "dd")[2] == "none given"
    assert texts(page, "p", "plain")[0] == "You study alone, so no instructor sees your practice."


def test_account_of_an_instructor_names_the_cohorts_taught(
    ines: Person, harbour: Cohort, slipway: Cohort, client_of: ClientOf
) -> None:
    page = client_of(ines).get(reverse("account"))

    assert [text for text in texts(page, "li") if "group" in text] == ["Harbour group"]


@pytest.mark.parametrize("cohorts", [1, 3])
def test_account_asks_the_database_three_times(
    solo: Person,
    client_of: ClientOf,
    cohorts: int,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    for cohort in CohortFactory.create_batch(cohorts):
        Membership.objects.create(cohort=cohort, person=solo)
    client = client_of(solo)

    with django_assert_num_queries(3):  # session, person, places with their cohorts
        client.get(reverse("account"))


# --- Changing it ------------------------------------------------------------------


def test_learner_changes_name_and_email(mina: Person, client_of: ClientOf) -> None:
    fields = {"name": "  Mina   Tarrant-Lowe ", "email": ""}
    page = client_of(mina).post(reverse("details"), fields, follow=True)
    mina.refresh_from_db()

    assert (mina.name, mina.email) == ("Mina Tarrant-Lowe", "")
    assert notices(page) == ["Your details are changed."]


@pytest.mark.parametrize(
    ("fields", "refused"),
    [
        ({"name": "", "email": ""}, ["This is still empty."]),
        ({"name": "   ", "email": ""}, ["This is still empty."]),
        ({"name": "m" * 121, "email": ""}, ["Use at most 120 characters. This has 121."]),
        ({"name": "Mina\0", "email": ""}, [UNSEEN]),
        ({"name": "Mina\x07", "email": ""}, [UNSEEN]),
        ({"name": "Mina \u202egnirps", "email": ""}, [UNSEEN]),
        ({"name": "Mina", "email": "not an address"}, ["This is not an e-mail address."]),
        (
            {"name": "Mina", "email": f"{'m' * 250}@a.example"},
            ["Use at most 254 characters. This has 260."],
        ),
        ({}, ["This is still empty."]),
    ],
)
def test_details_that_are_no_good_change_nothing(
    mina: Person, client_of: ClientOf, fields: dict[str, str], refused: list[str]
) -> None:
    page = client_of(mina).post(reverse("details"), fields)
    mina.refresh_from_db()

    assert (page.status_code, refusals(page)[:1]) == (422, refused)
    assert (mina.name, mina.email) == ("Mina Tarrant", "mina@quay-street.example")


def test_details_can_change_nothing_else(mina: Person, client_of: ClientOf) -> None:
    fields = {"name": "Mina", "role": "instructor", "sign_in_name": "ines", "is_active": ""}
    client_of(mina).post(reverse("details"), fields)
    mina.refresh_from_db()

    assert (mina.role, mina.sign_in_name, mina.is_active) == ("learner", "mina", True)


def test_name_is_shown_as_text(mina: Person, client_of: ClientOf) -> None:
    client = client_of(mina)
    client.post(reverse("details"), {"name": "<script>alert(1)</script>"})
    page = client.get(reverse("account"))

    assert texts(page, "dd")[0] == "<script>alert(1)</script>"
    assert texts(page, "script") == [""]  # the site's own, a file


# --- The password -----------------------------------------------------------------


def change(client: Client, now: str, new: str, again: str = "") -> tuple[int, list[str]]:
    fields = {"current_password": now, "new_password": new, "again": again or new}
    response = client.post(reverse("password"), fields)
    return response.status_code, refusals(response)


def test_new_password_signs_in_and_the_old_does_not(mina: Person, client_of: ClientOf) -> None:
    change(client_of(mina), PASSWORD, "leader-black-bars")

    assert Client().login(username="mina", password="leader-black-bars")
    assert not Client().login(username="mina", password=PASSWORD)


def test_new_password_ends_the_other_sessions_only(mina: Person, client_of: ClientOf) -> None:
    here, elsewhere = client_of(mina), client_of(mina)
    change(here, PASSWORD, "leader-black-bars")

    statuses = [client.get(reverse("account")).status_code for client in (here, elsewhere)]
    assert statuses == [200, 302]


@pytest.mark.parametrize(
    ("now", "new", "again", "refused"),
    [
        ("wrong", "leader-black-bars", "", "That is not your password now. Nothing is changed."),
        (
            PASSWORD,
            "short",
            "",
            "This password is too short. It must contain at least 10 characters.",
        ),
        (
            PASSWORD,
            "leader-black-bars",
            "other",
            "The two passwords are not the same. Type both again.",
        ),
        (PASSWORD, "password123", "", "This password is too common."),
        (PASSWORD, "minatarrant", "", "The password is too similar to the name."),
        (PASSWORD, "x" * 257, "", "Use at most 256 characters. This has 257."),
        (PASSWORD, "leader\0black", "", UNSEEN),
        ("", "leader-black-bars", "", "This is still empty."),
    ],
)
def test_password_that_is_no_good_changes_nothing(
    mina: Person, client_of: ClientOf, now: str, new: str, again: str, refused: str
) -> None:
    status, said = change(client_of(mina), now, new, again)

    assert (status, said[0]) == (422, refused)
    assert Client().login(username="mina", password=PASSWORD)


def test_guessing_the_password_in_an_open_session_is_throttled(
    mina: Person, client_of: ClientOf
) -> None:
    client = client_of(mina)
    statuses = [change(client, f"wrong {n}", "leader-black-bars")[0] for n in range(6)]

    assert statuses == [422] * 5 + [429]


# --- Making one -------------------------------------------------------------------


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
    settings.NEW_ACCOUNTS_PER_ADDRESS = 3
    statuses = [make(Client(), sign_in_name=f"peg{n}")[0] for n in range(4)]

    assert (statuses, Person.objects.count()) == ([302] * 3 + [429], 3)


def test_account_leaves_nothing_behind_when_it_cannot_be_made(client: Client, mina: Person) -> None:
    Person.objects.update(joined_at=timezone.now() - timedelta(days=1))
    make(client, sign_in_name="mina")

    assert list(Tries.objects.values_list("count", flat=True)) == [1]  # the try alone
    assert Membership.objects.exclude(person=mina).count() == 0
