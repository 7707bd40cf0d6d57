"""What an instructor sees of a cohort's practice."""

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.models import Attempt
from exercises.practice.attempts import ask, submit
from exercises.standing.scores import skills_of
from tests.answers import right_answer, wrong_answer
from tests.believers import believed
from tests.pages import texts
from tests.people import learner

ClientOf = Callable[[Person], Client]
MODE = KINDS["choose-the-mode"]


def answer(person: Person, *, right: bool, day: int = 1) -> Attempt:
    asked = ask(person, MODE, seed=3)  # one seed: one skill
    now = datetime(2026, 5, day, 12, tzinfo=UTC)
    return submit(asked, right_answer(asked) if right else wrong_answer(asked), now=now)


def test_standing_is_the_mean_of_the_last_ten(mina: Person) -> None:
    answer(mina, right=False, day=1)
    for day in range(2, 11):
        answer(mina, right=True, day=day)
    at_ten = skills_of(mina)
    answer(mina, right=True, day=11)
    at_eleven = skills_of(mina)

    shown = [[(own.score, own.answers) for _, own in all_ if own] for all_ in (at_ten, at_eleven)]
    assert shown == [[(90, 10)], [(100, 11)]]


def test_cohort_queries_do_not_grow(
    ines: Person,
    harbour: Cohort,
    client_of: ClientOf,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    client = client_of(ines)
    for name in ("Una Reed", "Piet Sloan"):
        answer(learner(name, harbour), right=True)
        # session, person, cohort; number of people, the people; overview: numbers, idle, stuck
        with django_assert_num_queries(8):
            client.get(harbour.get_absolute_url())


def test_instructor_sees_an_answer_as_the_learner_saw_it(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    attempt = answer(mina, right=False)

    own = client_of(mina).get(attempt.get_absolute_url())
    seen = client_of(ines).get(reverse("cohort-attempt", args=[harbour.pk, mina.pk, attempt.key]))

    for name in ("shown", "answers", "verdict", "feedback"):
        assert seen.context[name] == own.context[name]


def test_answer_is_not_found_under_another_learner(
    ines: Person, mina: Person, tom: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    attempt = answer(mina, right=True)

    response = client_of(ines).get(
        reverse("cohort-attempt", args=[harbour.pk, tom.pk, attempt.key])
    )

    assert response.status_code == 404


def test_huge_numbers_in_the_address_are_not_found(ines: Person, client_of: ClientOf) -> None:
    assert client_of(ines).get(reverse("cohort", args=[10**40])).status_code == 404


def test_person_page_names_the_beliefs_that_answers_point_at(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    for seed in range(12):
        asked = ask(mina, MODE, seed=seed)
        submit(asked, believed(asked.as_question(), {"assemble-picks-tracks"}))
    expected = sum("assemble-picks-tracks" in each.misconceptions for each in mina.attempts.all())

    page = client_of(ines).get(reverse("cohort-person", args=[harbour.pk, mina.pk]))

    beliefs = {belief.id: times for belief, times, _ in page.context["beliefs"]}
    assert (expected > 0, beliefs) == (True, {"assemble-picks-tracks": expected})


def test_person_queries_do_not_grow(
    ines: Person,
    mina: Person,
    harbour: Cohort,
    client_of: ClientOf,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    client, url = client_of(ines), reverse("cohort-person", args=[harbour.pk, mina.pk])
    for _ in range(2):
        answer(mina, right=False)
        # session, person; learner and cohort with access; count, page; standings; beliefs;
        # runs, sheets
        with django_assert_num_queries(11):
            client.get(url)


def test_board_keeps_what_was_asked_for_from_page_to_page(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    for number in range(30):
        learner(f"Extra{number} Person", harbour)

    page = client_of(ines).get(harbour.get_absolute_url(), {"show": "idle", "sort": "last"})

    assert 'href="?show=idle&amp;sort=last&amp;page=2"' in page.content.decode()


@pytest.mark.parametrize(
    ("asked", "sentence"),
    [
        ({"sort": "height"}, "There is no such order. Choose from the list."),
        ({"idle_days": "soon"}, "Write a whole number of days."),
        ({"idle_days": "0"}, "At least 1 day."),
        ({"name": "x" * 121}, "Use at most 120 characters. This has 121."),
        ({"skill": "a" * 9000}, "There is no such skill. Choose from the list."),
    ],
)
def test_nonsense_in_the_address_is_a_sentence_beside_the_whole_board(
    asked: dict[str, str],
    sentence: str,
    ines: Person,
    mina: Person,
    harbour: Cohort,
    client_of: ClientOf,
) -> None:
    page = client_of(ines).get(harbour.get_absolute_url(), asked)

    assert page.status_code == 422
    assert texts(page, "ul", "errorlist") == [sentence]
    assert "Mina Tarrant" in texts(page, "th")


def test_word_on_the_board_leads_to_the_answers_in_that_skill(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client, attempt = client_of(ines), answer(mina, right=False)
    other = submit(asked := ask(mina, KINDS["care-and-safety"]), right_answer(asked))
    board = client.get(harbour.get_absolute_url()).content.decode()
    url = f"{reverse('cohort-person', args=[harbour.pk, mina.pk])}?skill={attempt.skill}"

    assert f'href="{url}#answers"' in board
    found = client.get(url).content.decode()
    assert (attempt.key in found, other.key in found) == (True, False)
