"""My record: my own answers, as I saw them, and nobody else's."""

from collections.abc import Callable

from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Person
from exercises.bench.verbs import begin
from exercises.drills.register import KINDS
from exercises.practice.attempts import ask, submit
from exercises.practice.pages import PER_PAGE
from exercises.worktop.practical import Way
from exercises.worktop.shelf import practicals
from tests.answers import right_answer, wrong_answer

ClientOf = Callable[[Person], Client]
MODE = KINDS["choose-the-mode"]


def answer_times(person: Person, times: int) -> None:
    for _ in range(times):
        asked = ask(person, MODE)
        submit(asked, right_answer(asked))


def test_record_holds_own_answers_only(mina: Person, tom: Person, client_of: ClientOf) -> None:
    answer_times(mina, 2)
    answer_times(tom, 1)

    page = client_of(mina).get(reverse("record")).context["page"]

    assert [attempt.person for attempt in page] == [mina, mina]


def test_record_turns_pages(mina: Person, client_of: ClientOf) -> None:
    answer_times(mina, PER_PAGE + 1)

    page = client_of(mina).get(reverse("record"), {"page": "2"}).context["page"]

    assert (page.number, len(page.object_list)) == (2, 1)


def test_record_of_a_nonsense_page_is_a_page(mina: Person, client_of: ClientOf) -> None:
    for number in ("zero", "-1", "9" * 30):
        assert client_of(mina).get(reverse("record"), {"page": number}).status_code == 200


def test_record_queries_do_not_grow(
    mina: Person, client_of: ClientOf, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    client = client_of(mina)
    for _ in range(2):
        answer_times(mina, 3)
        begin(mina, practicals()["three-shots"], Way.ALONE)
        # session, person, count, page, standings, sets, sign-offs, runs and sheets
        with django_assert_num_queries(9):
            client.get(reverse("record"))


def test_attempt_shows_the_answer_and_what_came_of_it(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, MODE)
    attempt = submit(asked, wrong_answer(asked))

    response = client_of(mina).get(attempt.get_absolute_url())

    assert response.context["verdict"] == attempt.verdict
    assert "Not right" in response.content.decode()


def test_attempt_of_another_learner_is_unknown(
    mina: Person, tom: Person, client_of: ClientOf
) -> None:
    asked = ask(mina, MODE)
    attempt = submit(asked, right_answer(asked))

    assert client_of(tom).get(attempt.get_absolute_url()).status_code == 404
