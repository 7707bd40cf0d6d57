"""One's own account."""

from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Membership, Person
from course.cohorts.visible import UNSEEN
from tests.pages import notices, refusals, texts
from tests.people import PASSWORD, CohortFactory

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]


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
def test_account_asks_the_database_constantly(
    solo: Person,
    client_of: ClientOf,
    cohorts: int,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    for cohort in CohortFactory.create_batch(cohorts):
        Membership.objects.create(cohort=cohort, person=solo)
    client = client_of(solo)

    # Session, person, links for a new password, places with their cohorts.
    with django_assert_num_queries(4):
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
    assert set(texts(page, "script")) == {""}  # the site's own, in files


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
    statuses = [change(client, f"wrong {n}", "leader-black-bars")[0] for n in range(11)]

    assert statuses == [422] * 10 + [429]
