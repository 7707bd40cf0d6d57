"""More answers a minute than anybody gives who reads the questions are not taken."""

from collections.abc import Callable
from datetime import datetime, timedelta

import pytest
from django.test import Client
from django.urls import reverse
from django.utils import timezone
from pytest_django import Settings

from course.cohorts.models import Person
from exercises.drills.register import KINDS
from exercises.models import Asked, Attempt
from exercises.practice.attempts import ask, submit
from exercises.practice.haste import TooFastError
from tests.answers import right_answer, sent
from tests.pages import texts

ClientOf = Callable[[Person], Client]
TYPED = (
    "An insert, since the control track has to go on after it: an assemble edit lays a new one "
    "from its own start, and leave a gap in it where it ends, so that the rest would not play."
)
HTMX = {"hx-request": "true"}


@pytest.fixture(autouse=True)
def three_a_minute(settings: Settings) -> None:
    settings.ANSWERS_A_MINUTE = 3


def answered(person: Person, *seconds_ago: int, now: datetime | None = None) -> Asked:
    """A question that is open, after answers that were given so long ago."""
    now = now or timezone.now()
    for ago in seconds_ago:
        asked = ask(person, KINDS["choose-the-mode"])
        submit(asked, right_answer(asked), now=now - timedelta(seconds=ago))
    return ask(person, KINDS["choose-the-mode"])


def test_answer_after_a_minutes_answers_waits_for_the_first_to_be_a_minute_old(
    mina: Person,
) -> None:
    now = timezone.now()
    asked = answered(mina, 50, 20, 10, now=now)

    with pytest.raises(TooFastError) as refusal:
        submit(asked, right_answer(asked), now=now)

    assert refusal.value.until == now + timedelta(seconds=10)


@pytest.mark.parametrize(
    "seconds_ago",
    [(50, 20), (60, 20, 10), (300, 200, 100), (-3600, -3600, -3600)],
    ids=["few", "a minute old", "long ago", "dated by a clock that was ahead"],
)
def test_answer_at_anybodys_pace_is_taken(mina: Person, seconds_ago: tuple[int, ...]) -> None:
    now = timezone.now()

    asked = answered(mina, *seconds_ago, now=now)

    assert submit(asked, right_answer(asked), now=now).asked == asked


def test_other_peoples_answers_do_not_count(mina: Person, tom: Person) -> None:
    answered(mina, 3, 2, 1)

    asked = answered(tom)

    assert submit(asked, right_answer(asked)).asked == asked


def test_answer_that_is_sent_again_is_no_further_one(mina: Person) -> None:
    answered(mina, 3, 2, 1)
    last = Attempt.objects.latest("pk")

    assert submit(last.asked, right_answer(last.asked)) == last


@pytest.mark.parametrize("headers", [{}, HTMX], ids=["page", "fragment"])
def test_page_keeps_what_was_typed_and_says_when_to_send_it(
    mina: Person, client_of: ClientOf, headers: dict[str, str]
) -> None:
    answered(mina, 3, 2, 1)
    asked = ask(mina, KINDS["free-answer"])
    url = reverse("drill-answer", args=[asked.token])
    response = client_of(mina).post(url, {"text": TYPED}, headers=headers)

    assert (response.status_code, Attempt.objects.count()) == (429, 3)
    assert 40 < int(response.headers["Retry-After"]) <= 57
    (said,) = texts(response, "p", "notice")
    assert "send it again in" in said
    assert texts(response, "textarea") == [TYPED]
    assert not response.has_header("HX-Retarget")


def test_the_same_form_is_taken_when_the_wait_is_over(
    mina: Person, client_of: ClientOf, settings: Settings
) -> None:
    asked = answered(mina, 3, 2, 1)
    typed = sent(asked, right_answer(asked))
    url = reverse("drill-answer", args=[asked.token])
    client = client_of(mina)
    before = client.post(url, typed).status_code
    settings.ANSWERS_A_MINUTE = 60

    assert (before, client.post(url, typed).status_code) == (429, 302)
    assert Attempt.objects.filter(asked=asked).count() == 1
