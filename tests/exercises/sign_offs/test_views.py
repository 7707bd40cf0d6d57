"""The pages of signing off, and the page that checks a card."""

import re
from collections.abc import Callable
from typing import Any

import pytest
from django.conf import settings
from django.test import Client, override_settings
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Person
from exercises.models import SignOff
from exercises.own_data.renaming import change_details
from exercises.sign_offs.verbs import Decision, sign_off, withdraw
from tests.pages import heading, notices, refusals, texts
from tests.people import learner

ClientOf = Callable[[Person], Client]
KEY = "0123456789abcdef" * 2
GOOD = {"state": "supervised", "bench": "Bench 1", "note": "With me.", "key": KEY}
SENT = GOOD | {"named": "Mina Tarrant"}


@pytest.fixture
def made(ines: Person, mina: Person, harbour: Cohort) -> SignOff:
    return sign_off(ines, mina, harbour, Decision(**GOOD))


@pytest.fixture
def decide(harbour: Cohort, mina: Person) -> str:
    return reverse("sign-off-person", args=[harbour.pk, mina.pk])


def test_instructor_signs_off_a_learner(ines: Person, decide: str, client_of: ClientOf) -> None:
    page = client_of(ines).post(decide, SENT, follow=True)

    made = SignOff.objects.get()
    assert (made.state, made.bench, made.note) == ("supervised", "Bench 1", "With me.")
    assert notices(page) == ["Mina Tarrant: ready for the supervised bench. It is kept."]
    assert texts(page, "p", "verdict") == ["Ready for the supervised bench"]


@pytest.mark.database
@pytest.mark.parametrize(
    ("sent", "sentence"),
    [
        ({"state": ""}, "Choose one of the three."),
        ({"state": "boss"}, "Choose one."),
        ({"bench": " "}, "This is still empty."),
        ({"bench": "x" * 121}, "Use at most 120 characters. This has 121."),
        ({"note": "x" * 2001}, "Use at most 2000 characters. This has 2001."),
        (
            {"note": "with\x00me"},
            "There is a character in this that can’t be seen. Type it again.",
        ),
        (
            {"key": "mine"},
            "This page was incomplete. Look through what you wrote, then send it again.",
        ),
        (
            {"named": "Tom Brandreth"},
            "This learner is called Mina Tarrant now, and was not when you opened this page. "
            "Sign only if that is whom you mean.",
        ),
    ],
)
def test_bad_decision_is_refused_with_a_sentence(
    sent: dict[str, str], sentence: str, ines: Person, decide: str, client_of: ClientOf
) -> None:
    page = client_of(ines).post(decide, SENT | sent)

    assert page.status_code == 422
    assert sentence in [*refusals(page), *texts(page, "p", "errorlist")]
    assert not SignOff.objects.exists()


def test_what_was_typed_stays_in_a_refused_decision(
    ines: Person, decide: str, client_of: ClientOf
) -> None:
    page = client_of(ines).post(decide, SENT | {"state": "", "note": "Kept words"})

    assert texts(page, "textarea") == ["Kept words"]


def test_name_that_changed_meanwhile_is_signed_when_it_was_read(
    ines: Person, mina: Person, decide: str, client_of: ClientOf
) -> None:
    change_details(mina, name="Lena Fosse", email="")
    client = client_of(ines)
    refused = client.post(decide, SENT)
    (read,) = re.findall(r'name="named" value="([^"]*)"', refused.content.decode())
    client.post(decide, SENT | {"named": read})

    assert SignOff.objects.get().person_name == "Lena Fosse"


def test_card_and_check_page_keep_the_name_that_was_signed(
    ines: Person, mina: Person, made: SignOff, client_of: ClientOf
) -> None:
    change_details(mina, name="Lena Fosse", email="")
    ines.name = "Rafe Okell"
    ines.save()
    card = client_of(mina).get(made.get_absolute_url())
    check = Client().get(reverse("verify-card", args=[made.code]))

    assert texts(card, "p", "card-name") == ["Mina Tarrant"]
    assert "Ines Marlow" in texts(card, "dd")
    assert (texts(check, "dd")[0], texts(check, "dd")[4]) == ("Mina Tarrant", "Ines Marlow")
    assert not [page for page in (card, check) if "Rafe Okell" in page.content.decode()]
    assert "Lena Fosse" not in check.content.decode()


def test_instructors_pages_say_both_names(
    ines: Person, mina: Person, made: SignOff, harbour: Cohort, client_of: ClientOf
) -> None:
    change_details(mina, name="Lena Fosse", email="")
    client = client_of(ines)
    one = client.get(reverse("sign-off", args=[harbour.pk, made.code]))
    many = client.get(reverse("sign-offs", args=[harbour.pk]))

    assert heading(one) == "Mina Tarrant"
    assert texts(one, "p", "plain")[0].startswith("Signed as Mina Tarrant, called Lena Fosse now.")
    assert "signed as Mina Tarrant" in texts(many, "span", "small")


def test_withdrawn_sign_off_says_so_to_learner_and_card_checker(
    ines: Person, mina: Person, made: SignOff, client_of: ClientOf
) -> None:
    url = reverse("withdraw-sign-off", args=[made.cohort_id, made.code])
    client_of(ines).post(url, {"reason": "The end was recorded over."})

    record = client_of(mina).get(reverse("record")).content.decode()
    assert "The end was recorded over." in record
    card = Client().get(reverse("verify-card", args=[made.code]))
    assert texts(card, "p", "verdict")[0].startswith("Withdrawn on ")
    assert "recorded over" not in card.content.decode()


@pytest.mark.parametrize("typed", ["{code}", "{lower}", " {half}-{rest} "])
def test_card_is_found_however_its_code_is_typed(typed: str, made: SignOff) -> None:
    code = made.code
    text = typed.format(code=code, lower=code.lower(), half=code[:4], rest=code[4:])

    page = Client().post(reverse("verify"), {"code": text}, follow=True)

    assert heading(page) == f"Bench card {made.spoken_code}"
    assert texts(page, "dd") == [
        "Mina Tarrant",
        "Ready for the supervised bench",
        "Bench 1",
        f"{made.at:%-d %B %Y}",
        "Ines Marlow",
        "With me.",
    ]


def test_conditions_stand_on_the_card_and_on_today(
    mina: Person, made: SignOff, client_of: ClientOf
) -> None:
    client = client_of(mina)

    (card,) = texts(client.get(made.get_absolute_url()), "section", "bench-card")
    (today,) = texts(client.get(reverse("today")), "p", "notice")

    assert "Conditions With me." in card
    assert "With me." in today


def test_reason_of_not_ready_is_for_the_learner_alone(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    made = sign_off(ines, mina, harbour, Decision(**GOOD | {"state": "not-yet"}))

    checked = Client().get(reverse("verify-card", args=[made.code]))

    assert "With me." not in checked.content.decode()
    assert "With me." in client_of(mina).get(reverse("record")).content.decode()


@pytest.mark.parametrize("typed", ["", "BCDF", "ЖЖЖЖЖЖЖЖ", "BCDFGHJK2", "B" * 61, "%%%%%%%%"])
def test_code_that_can_be_no_cards_is_refused(typed: str, db: None) -> None:
    page = Client().post(reverse("verify"), {"code": typed})

    assert page.status_code == 422
    assert len(refusals(page)) == 1


def test_unknown_code_is_404_in_a_sentence(made: SignOff) -> None:
    page = Client().get(reverse("verify-card", args=["BBBBBBBB"]))

    assert page.status_code == 404
    assert texts(page, "p", "notice") == [
        "No card has this code. Compare it with the card, letter by letter."
    ]


def test_guessing_codes_ends_soon(made: SignOff) -> None:
    with override_settings(PACES=settings.PACES | {"card": (3, 60)}):
        client = Client()
        tried = [
            client.get(reverse("verify-card", args=[code])).status_code
            for code in ("BBBBBBBB", "CCCCCCCC", made.code, "DDDDDDDD", made.code)
        ]

    assert tried == [404, 404, 200, 404, 429]


def test_not_ready_has_no_card(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    decision = Decision(**GOOD | {"state": "not-yet"})
    url = sign_off(ines, mina, harbour, decision).get_absolute_url()

    page = client_of(mina).get(url)

    assert texts(page, "section", "bench-card") == []
    assert "So there is no card to print." in texts(page, "p", "plain")


def test_today_tells_a_learner_what_counts(
    ines: Person, mina: Person, made: SignOff, client_of: ClientOf
) -> None:
    def told() -> list[str]:
        return texts(client_of(mina).get(reverse("today")), "p", "notice")

    (before,) = told()
    withdraw(ines, made, "Later.")

    assert before.startswith("Ready for the supervised bench, at Bench 1: signed by Ines Marlow")
    assert told() == []


def test_list_shows_one_state_only(
    ines: Person, made: SignOff, tom: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    def names(state: str) -> list[str]:
        page = client_of(ines).get(reverse("sign-offs", args=[harbour.pk]), {"state": state})
        return texts(page, "th")[4:]

    assert names("supervised") == ["Mina Tarrant"]
    assert names("none") == ["Tom Brandreth"]
    assert names("nonsense") == ["Mina Tarrant", "Tom Brandreth"]


def test_list_queries_do_not_grow(
    ines: Person,
    made: SignOff,
    harbour: Cohort,
    client_of: ClientOf,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    def visit(**extra: Any) -> None:
        client.get(reverse("sign-offs", args=[harbour.pk]))

    client = client_of(ines)
    with django_assert_num_queries(5):  # session, person, cohort, sign-offs, people
        visit()
    for number in range(3):
        person = learner(f"Extra{number} Person", harbour)
        sign_off(ines, person, harbour, Decision(**GOOD | {"key": f"{number:032x}"}))
    with django_assert_num_queries(5):
        visit()
