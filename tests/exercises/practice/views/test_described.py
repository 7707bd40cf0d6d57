"""Questions described in words: asked for once or for good, and told in the record."""

from collections.abc import Callable
from html import unescape

import pytest
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Person
from exercises.drills.kind import Kind
from exercises.drills.register import KINDS
from exercises.models import Asked
from exercises.practice.attempts import ask, submit
from tests.answers import right_answer, wrong_answer

ClientOf = Callable[[Person], Client]
HTMX = {"hx-request": "true"}
SHOWING = {slug: kind for slug, kind in KINDS.items() if kind.make(0).media}
EACH_SHOWING = pytest.mark.parametrize("kind", SHOWING.values(), ids=SHOWING)
BY_EYE, MODE = KINDS["spot-by-eye"], KINDS["choose-the-mode"]


def words(asked: Asked, number: int = 0) -> list[str]:
    return list(asked.question["media"][number]["words"])


@EACH_SHOWING
def test_question_is_described_when_that_is_asked_for(
    kind: Kind, mina: Person, client_of: ClientOf
) -> None:
    asked, client = ask(mina, kind), client_of(mina)
    before = client.get(reverse("drill", args=[kind.slug])).content.decode()

    response = client.post(reverse("drill-in-words", args=[asked.token]), follow=True)

    page = response.content.decode()
    assert ("/shown/" in before, "/shown/" in page) == (True, False)
    assert [each for each in words(asked) if each not in unescape(page)] == []
    assert Asked.objects.get().pk == asked.pk


def test_question_is_described_in_its_place(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, BY_EYE)

    url = reverse("drill-in-words", args=[asked.token])
    page = client_of(mina).post(url, headers=HTMX).content.decode()

    assert ("<html" in page, words(asked)[0] in page) == (False, True)


def test_words_are_for_the_person_asked(mina: Person, tom: Person, client_of: ClientOf) -> None:
    asked = ask(mina, BY_EYE)

    response = client_of(tom).post(reverse("drill-in-words", args=[asked.token]))

    asked.refresh_from_db()
    assert (response.status_code, asked.described) == (404, False)


def test_answered_question_stays_as_it_was_asked(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, BY_EYE)
    attempt = submit(asked, right_answer(asked))

    response = client_of(mina).post(
        reverse("drill-in-words", args=[asked.token]), follow=True, headers=HTMX
    )

    asked.refresh_from_db()
    attempt.refresh_from_db()
    assert (asked.described, attempt.described, response.status_code) == (False, False, 200)


def test_person_who_wants_words_is_asked_in_words(mina: Person) -> None:
    open_before = ask(mina, BY_EYE)
    mina.in_words = True
    mina.save()

    described = [ask(mina, kind).described for kind in (BY_EYE, MODE)]

    assert ask(mina, BY_EYE) == open_before
    assert described == [True, False]  # the other has nothing to describe


def test_record_says_that_it_was_described(
    mina: Person, harbour: object, ines: Person, client_of: ClientOf
) -> None:
    mina.in_words = True
    mina.save()
    asked = ask(mina, BY_EYE)
    attempt = submit(asked, wrong_answer(asked))
    cohort = mina.cohorts.get()

    pages = [
        client_of(mina).get(reverse("record")),
        client_of(mina).get(attempt.get_absolute_url()),
        client_of(ines).get(reverse("cohort-person", args=[cohort.pk, mina.pk])),
        client_of(ines).get(reverse("cohort-attempt", args=[cohort.pk, mina.pk, attempt.key])),
    ]

    assert attempt.described
    assert ["described in words" in page.content.decode() for page in pages] == [True] * 4


def test_feedback_shows_what_was_described(mina: Person, client_of: ClientOf) -> None:
    mina.in_words = True
    mina.save()
    asked = ask(mina, BY_EYE)

    page = client_of(mina).get(submit(asked, wrong_answer(asked)).get_absolute_url())

    assert words(asked)[0] in page.content.decode()
    assert "/shown/" in page.content.decode()
