"""No page is heavy."""

from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Person
from course.lessons.shelf import shelf
from exercises.drills.register import KINDS
from exercises.practice.attempts import ask, submit
from tests.answers import wrong_answer
from tests.weight import HEAVIEST, weight

ClientOf = Callable[[Person], Client]


@pytest.mark.parametrize("slug", sorted(KINDS))
def test_answer_is_light(slug: str, mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, KINDS[slug], seed=1)
    attempt = submit(asked, wrong_answer(asked))

    page = client_of(mina).get(attempt.get_absolute_url()).content

    assert weight(page) < HEAVIEST


@pytest.mark.parametrize("slug", [lesson.slug for lesson in shelf().lessons])
def test_lesson_is_light(slug: str, mina: Person, client_of: ClientOf) -> None:
    page = client_of(mina).get(reverse("lesson", args=[slug])).content

    assert weight(page) < HEAVIEST
