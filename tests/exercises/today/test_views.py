"""Today: what to do next, and why that."""

from collections.abc import Callable

from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Person
from course.lessons.reading import finish, reach
from course.lessons.shelf import shelf
from exercises.drills.register import KINDS
from exercises.practice.attempts import ask, submit
from tests.answers import right_answer, wrong_answer
from tests.pages import texts

ClientOf = Callable[[Person], Client]
MODE = KINDS["choose-the-mode"]


def answer(person: Person, *, right: bool) -> None:
    asked = ask(person, MODE)
    submit(asked, right_answer(asked) if right else wrong_answer(asked))


def test_today_of_a_beginner_is_a_lesson(mina: Person, client_of: ClientOf) -> None:
    page = client_of(mina).get(reverse("today"))

    assert page.context["step"].what == "lesson"
    assert f'href="{reverse("lesson", args=[page.context["step"].slug])}"' in page.content.decode()


def test_today_after_a_wrong_answer_is_that_drill(mina: Person, client_of: ClientOf) -> None:
    answer(mina, right=False)

    step = client_of(mina).get(reverse("today")).context["step"]

    assert (step.slug, step.why) == (MODE.slug, "Your last answer here was not right yet.")


def test_today_of_a_reader_goes_on_where_they_were(mina: Person, client_of: ClientOf) -> None:
    lesson = shelf().lessons[0]
    reach(mina, lesson, lesson.contents[1].id)

    page = client_of(mina).get(reverse("today"))

    place = f'href="/lessons/{lesson.slug}/#{lesson.contents[1].id}"'
    assert page.content.decode().count(place) == 1
    assert f"Go on at “{lesson.contents[1].title}”" in texts(page, "a", "button")


def test_today_names_the_lesson_begun_beside_another_step(
    mina: Person, client_of: ClientOf
) -> None:
    answer(mina, right=False)
    lesson = shelf().lessons[0]
    reach(mina, lesson, lesson.contents[1].id)

    page = client_of(mina).get(reverse("today"))

    assert page.context["step"].slug == MODE.slug
    assert f"You were reading “{lesson.title}”" in page.content.decode()


def test_today_after_a_lesson_is_its_drill(mina: Person, client_of: ClientOf) -> None:
    for lesson in shelf().lessons:
        finish(mina, lesson)

    assert client_of(mina).get(reverse("today")).context["step"].what == "drill"


def test_today_shows_the_latest_answers_only(mina: Person, client_of: ClientOf) -> None:
    for _ in range(7):
        answer(mina, right=True)

    assert len(client_of(mina).get(reverse("today")).context["latest"]) == 5


def test_today_queries_do_not_grow(
    mina: Person, client_of: ClientOf, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    client = client_of(mina)
    for _ in range(2):
        answer(mina, right=True)
        # session, person, answers, readings, cohorts, assignments, set, sign-offs, notices,
        # reviews, latest
        with django_assert_num_queries(11):
            client.get(reverse("today"))


def test_today_of_an_instructor_is_their_cohorts(ines: Person, client_of: ClientOf) -> None:
    assert client_of(ines).get(reverse("today"))["Location"] == reverse("cohorts")


def test_today_of_somebody_alone_says_how_to_join(solo: Person, client_of: ClientOf) -> None:
    assert f'href="{reverse("join")}"' in client_of(solo).get(reverse("today")).content.decode()
