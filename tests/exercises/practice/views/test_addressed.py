"""A learner is spoken to as “you”; an instructor who reads the same answer is told whose it is."""

import re
from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.models import Attempt
from exercises.practice.attempts import ask, submit
from tests.answers import right_answer, wrong_answer

ClientOf = Callable[[Person], Client]

WHOSE = re.compile(
    r"(you|your)\s+(answer|answered|chose|gave|order|recordings|report|setting|wrote)\b",
    re.IGNORECASE,
)


def answered(person: Person, slug: str) -> Attempt:
    asked = ask(person, KINDS[slug], seed=7)
    return submit(asked, right_answer(asked) if KINDS[slug].by_hand else wrong_answer(asked))


@pytest.mark.parametrize("slug", KINDS)
def test_answer_is_told_as_the_learners(
    slug: str, mina: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    attempt = answered(mina, slug)
    address = reverse("cohort-attempt", args=[harbour.pk, mina.pk, attempt.key])

    own = client_of(mina).get(attempt.get_absolute_url()).content.decode()
    theirs = client_of(ines).get(address).content.decode()

    assert "question and your answer again" in own
    assert f"question and {mina.name}’s answer again" in theirs
    assert WHOSE.search(theirs) is None
