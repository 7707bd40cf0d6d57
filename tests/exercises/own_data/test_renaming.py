"""A learner who is called otherwise: those who teach them or have signed for them are told."""

from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Cohort, Notice, Person
from course.cohorts.moving import remove
from exercises.sign_offs.verbs import Decision, sign_off
from tests.pages import texts

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]


def rename(client: Client, name: str) -> None:
    client.post(reverse("details"), {"name": name, "email": ""})


def told() -> list[tuple[str, str]]:
    return sorted(Notice.objects.values_list("person__name", "text"))


def test_every_instructor_is_told(
    ines: Person, rafe: Person, harbour: Cohort, mina: Person, lena: Person, client_of: ClientOf
) -> None:
    harbour.instructors.add(rafe)
    rename(client_of(mina), "Lena Fosse")
    sentence = "Mina Tarrant is called Lena Fosse now: they have changed their name themselves."

    assert told() == [("Ines Marlow", sentence), ("Rafe Okell", sentence)]
    assert sentence in texts(client_of(ines).get(reverse("cohorts")), "p")[0]


def test_who_signed_is_told_when_they_teach_no_more(
    ines: Person, harbour: Cohort, mina: Person, client_of: ClientOf
) -> None:
    sign_off(ines, mina, harbour, Decision(state="alone", bench="Bench 1", note="", key="k"))
    remove(ines, mina, harbour)
    Notice.objects.all().delete()
    rename(client_of(mina), "Lena Fosse")

    assert told() == [
        (
            "Ines Marlow",
            "Mina Tarrant is called Lena Fosse now: they have changed their name themselves. "
            "What was signed for them keeps the old name.",
        )
    ]


def test_administrators_rename_is_told_too(
    ada: Person, ines: Person, mina: Person, client_of: ClientOf
) -> None:
    fields = {"name": "Lena Fosse", "sign_in_name": "mina", "role": "learner", "is_active": "on"}
    places = {"memberships-TOTAL_FORMS": "0", "memberships-INITIAL_FORMS": "0"}
    client_of(ada).post(reverse("admin:cohorts_person_change", args=[mina.pk]), fields | places)

    assert told() == [
        ("Ines Marlow", "Mina Tarrant is called Lena Fosse now: they were renamed by Ada Quill.")
    ]


def test_nobody_is_told_of_no_change(
    ines: Person, harbour: Cohort, mina: Person, client_of: ClientOf
) -> None:
    rename(client_of(mina), " Mina  Tarrant ")

    assert told() == []


def test_instructors_who_are_renamed_are_nobodys_news(
    ines: Person, rafe: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    harbour.instructors.add(rafe)
    rename(client_of(ines), "Orla Finch")

    assert told() == []


def test_learner_reads_beforehand_who_is_told(mina: Person, client_of: ClientOf) -> None:
    page = client_of(mina).get(reverse("details"))

    assert texts(page, "p", "plain") == [
        "Your instructors are told when you change your name. "
        "What was signed for you keeps the name that was signed."
    ]
