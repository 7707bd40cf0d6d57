"""What an answer costs: six queries of the whole request at most, in a sitting too."""

from collections.abc import Callable

import pytest
from django.db import connection
from django.test import Client
from django.test.utils import CaptureQueriesContext
from django.urls import reverse

from course.cohorts.models import Cohort, Person
from exercises.drills.kind import Kind
from exercises.drills.register import KINDS
from exercises.models import Asked, Attempt, Sitting
from exercises.practice.attempts import ask, submit
from exercises.practice.sittings import next_question, start
from tests.answers import right_answer, sent
from tests.own import published

ClientOf = Callable[[Person], Client]
MOST = 6
pytestmark = pytest.mark.database
HTMX = {"hx-request": "true"}


def queries_of(client: Client, asked: Asked) -> list[str]:
    """What is asked of the database to take the answer and show what came of it."""
    url, typed = reverse("drill-answer", args=[asked.token]), sent(asked, right_answer(asked))
    with CaptureQueriesContext(connection) as queries:
        assert client.post(url, typed, headers=HTMX).status_code == 200
    marks = ("SAVEPOINT", "RELEASE", "BEGIN", "COMMIT")
    return [each["sql"] for each in queries if not each["sql"].startswith(marks)]


@pytest.mark.parametrize("kind", KINDS.values(), ids=lambda kind: kind.slug)
def test_answer_of_any_kind(kind: Kind, mina: Person, client_of: ClientOf) -> None:
    submit(before := ask(mina, KINDS["free-answer"]), right_answer(before))
    asked = ask(mina, kind)

    assert len(queries_of(client_of(mina), asked)) < MOST


def test_every_answer_of_a_sitting_from_the_first_of_all_to_the_one_that_ends_it(
    mina: Person, client_of: ClientOf
) -> None:
    sitting, client = start(mina, [], 5), client_of(mina)
    numbers = []
    for _ in range(5):
        asked = next_question(sitting)
        assert asked
        numbers.append(len(queries_of(client, asked)))

    assert max(numbers) == MOST
    assert not Sitting.objects.get().is_open


def test_answer_to_a_drill_of_an_instructor_in_a_sitting(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    drill = published(ines, harbour)
    sitting = start(mina, list(drill.kind.skills), 5)
    asked = next_question(sitting)
    assert asked

    assert len(queries_of(client_of(mina), asked)) == MOST
    assert Attempt.objects.get().own
