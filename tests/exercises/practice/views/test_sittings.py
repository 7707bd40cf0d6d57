"""The pages of a practice sitting."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Person
from exercises.models import Sitting
from exercises.practice.attempts import submit
from exercises.practice.sittings import next_question, open_sitting, start, stop
from tests.answers import right_answer
from tests.answers import sent as as_sent
from tests.pages import heading, texts

ClientOf = Callable[[Person], Client]


def test_learner_chooses_a_set(mina: Person, client_of: ClientOf) -> None:
    sent = {"skills": ["mending", "care-and-safety"], "length": "5"}
    page = client_of(mina).post(reverse("new-sitting"), sent, follow=True)

    sitting = Sitting.objects.get()
    assert (sitting.skills, sitting.length) == (["mending", "care-and-safety"], 5)
    assert texts(page, "p", "kicker") == ["Question 1 of 5: Mending, Care and safety"]


@pytest.mark.database
@pytest.mark.parametrize(
    ("sent", "sentence"),
    [
        ({}, "Choose how many questions."),
        ({"length": "7"}, "Choose 5, 10, 15 or 20."),
        ({"length": "-1"}, "Choose 5, 10, 15 or 20."),
        ({"length": "x" * 10_000}, "Choose 5, 10, 15 or 20."),
        (
            {"length": "5", "skills": "juggling"},
            "There is no such skill. Choose from the list.",
        ),
        (
            {"length": "5", "skills": ["mending"] + ["x\x00"] * 500},
            "There is no such skill. Choose from the list.",
        ),
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_bad_choice_starts_nothing(
    sent: dict[str, Any], sentence: str, mina: Person, client_of: ClientOf
) -> None:
    page = client_of(mina).post(reverse("new-sitting"), sent)

    assert page.status_code == 422
    assert texts(page, "p", "errorlist") == [sentence]
    assert not Sitting.objects.exists()


def test_open_set_is_gone_on_with(mina: Person, client_of: ClientOf) -> None:
    sitting = start(mina, [], 5)

    page = client_of(mina).get(reverse("new-sitting"))

    assert page["Location"] == sitting.get_absolute_url()


def test_answer_leads_to_the_next_question_and_the_last_to_the_debrief(
    mina: Person, client_of: ClientOf
) -> None:
    sitting, client = start(mina, ["care-and-safety"], 5), client_of(mina)
    headings, buttons = [], []
    for _ in range(5):
        headings.append(texts(client.get(sitting.get_absolute_url()), "p", "kicker")[0][:15])
        asked = next_question(sitting)
        assert asked
        url = reverse("drill-answer", args=[asked.token])
        page = client.post(url, as_sent(asked, right_answer(asked)), follow=True)
        buttons += texts(page, "a", "button")

    assert headings == [f"Question {number} of 5" for number in range(1, 6)]
    assert buttons == ["Next question"] * 4 + ["See what the sitting came to"]
    assert open_sitting(mina) is None
    assert heading(client.get(sitting.get_absolute_url())) == "What the sitting came to"


def test_feedback_says_how_many_are_left(mina: Person, client_of: ClientOf) -> None:
    sitting, client = start(mina, ["care-and-safety"], 5), client_of(mina)
    left = []
    for _ in range(2):
        asked = next_question(sitting)
        assert asked
        url = reverse("drill-answer", args=[asked.token])
        page = client.post(url, as_sent(asked, right_answer(asked)), headers={"hx-request": "true"})
        left += texts(page, "span", "quiet")

    assert left == ["4 of 5 to go", "3 of 5 to go"]


def test_stop_shows_the_debrief_at_once(mina: Person, client_of: ClientOf) -> None:
    sitting, client = start(mina, [], 5), client_of(mina)

    page = client.post(reverse("sitting-stop", args=[sitting.token]), follow=True)

    assert texts(page, "dt") == ["Tried", "Happened", "Why", "Next"]


def test_reload_of_an_ended_set_is_its_debrief(mina: Person, client_of: ClientOf) -> None:
    sitting = start(mina, [], 5)
    stop(sitting)

    assert heading(client_of(mina).get(sitting.get_absolute_url())) == "What the sitting came to"


def test_feedback_after_an_ended_set_offers_one_more_like_it(
    mina: Person, client_of: ClientOf
) -> None:
    sitting = start(mina, [], 5)
    asked = next_question(sitting)
    assert asked
    attempt = submit(asked, right_answer(asked))
    stop(sitting)

    page = client_of(mina).get(attempt.get_absolute_url())

    assert "One more like this" in texts(page, "button")


def test_today_and_drills_go_on_with_an_open_set(mina: Person, client_of: ClientOf) -> None:
    sitting, client = start(mina, [], 5), client_of(mina)
    for name in ("today", "drills", "record"):
        page = client.get(reverse(name)).content.decode()
        assert page.count(f'href="{sitting.get_absolute_url()}"') == 1
