"""Reviews in the browser: the queue, the instructor's form, the learner's side of it."""

from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.models import Attempt, Review
from exercises.practice.attempts import ask, submit
from exercises.reviews.verbs import Said, review
from tests.answers import right_answer
from tests.pages import notices, texts
from tests.people import learner

ClientOf = Callable[[Person], Client]
FREE = KINDS["free-answer"]
KEY = "0123456789abcdef" * 2


def written(person: Person) -> Attempt:
    asked = ask(person, FREE)
    return submit(asked, right_answer(asked))


def review_url(attempt: Attempt, cohort: Cohort) -> str:
    return reverse("review-attempt", args=[cohort.pk, attempt.person_id, attempt.key])


def page_url(attempt: Attempt, cohort: Cohort) -> str:
    return reverse("cohort-attempt", args=[cohort.pk, attempt.person_id, attempt.key])


def comment(by: Person, attempt: Attempt, what: str = "comment") -> Review:
    return review(by, attempt, Said(what=what, text="Name the mode.", key=f"{what}{attempt.pk}"))


@pytest.mark.parametrize(
    ("action", "percent", "kept"),
    [
        ("comment", "", ("comment", None, None)),
        ("right", "", ("score", True, 100)),
        ("partly", "40", ("score", False, 40)),
        ("not-right", "", ("score", False, 0)),
        ("sent-back", "", ("sent-back", None, None)),
    ],
)
def test_instructor_keeps_a_review(
    mina: Person,
    ines: Person,
    harbour: Cohort,
    client_of: ClientOf,
    action: str,
    percent: str,
    kept: tuple[str, bool | None, int | None],
) -> None:
    attempt = written(mina)
    form = {"action": action, "percent": percent, "text": "Name the mode.", "key": KEY}

    for _ in range(2):  # a double click
        response = client_of(ines).post(review_url(attempt, harbour), form)

    made = Review.objects.get()
    assert (response.status_code, response["Location"]) == (302, page_url(attempt, harbour))
    assert (made.what, made.right, made.score) == kept
    assert (made.by, made.text) == (ines, "Name the mode.")


@pytest.mark.parametrize(
    ("form", "wrong"),
    [
        ({}, ["action", "key"]),
        ({"action": "praise", "text": "Good.", "key": KEY}, ["action"]),
        ({"action": "partly", "percent": "", "text": "So so.", "key": KEY}, ["percent"]),
        ({"action": "partly", "percent": "", "text": "", "key": KEY}, ["percent"]),
        ({"action": "partly", "percent": "100", "text": "So so.", "key": KEY}, ["percent"]),
        ({"action": "partly", "percent": "half", "text": "So so.", "key": KEY}, ["percent"]),
        ({"action": "comment", "text": " ", "key": KEY}, ["text"]),
        ({"action": "right", "text": "x" * 2001, "key": KEY}, ["text"]),
        ({"action": "right", "text": "Yes\u202e.", "key": KEY}, ["text"]),
        ({"action": "right", "text": "Yes.", "key": "1"}, ["key"]),
    ],
)
def test_review_that_is_no_good_is_refused_and_kept_on_the_page(
    mina: Person,
    ines: Person,
    harbour: Cohort,
    client_of: ClientOf,
    form: dict[str, str],
    wrong: list[str],
) -> None:
    response = client_of(ines).post(review_url(written(mina), harbour), form)

    found = response.context["form"]
    assert (response.status_code, sorted(found.errors)) == (422, sorted(wrong))
    typed = {name: value for name, value in form.items() if name != "key"}
    assert {name: found[name].value() for name in typed} == typed
    assert Review.objects.count() == 0


def test_first_score_needs_no_reason_and_an_overruled_one_does(
    mina: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    attempt = written(mina)
    form = {"action": "right", "text": "", "key": KEY}
    client = client_of(ines)

    first = client.post(review_url(attempt, harbour), form)
    second = client.post(review_url(attempt, harbour), form | {"key": KEY[::-1]})

    assert (first.status_code, second.status_code) == (302, 422)
    assert list(second.context["form"].errors) == ["text"]


def test_learner_sees_the_review_on_today_and_replies(
    mina: Person, ines: Person, client_of: ClientOf
) -> None:
    attempt = written(mina)
    comment(ines, attempt)
    client = client_of(mina)

    before = client.get(reverse("today"))
    page = client.get(attempt.get_absolute_url())
    after = client.get(reverse("today"))
    replied = client.post(reverse("reply", args=[attempt.key]), {"text": "Insert."}, follow=True)

    assert notices(before) == ["Ines Marlow wrote about your answer to In your own words."]
    assert "Name the mode." in texts(page, "p")
    assert (notices(after), replied.context["form"]) == ([], None)
    assert "Insert." in texts(replied, "p")


def test_empty_reply_is_refused(mina: Person, ines: Person, client_of: ClientOf) -> None:
    attempt = written(mina)
    comment(ines, attempt)

    response = client_of(mina).post(reverse("reply", args=[attempt.key]), {"text": " "})

    assert (response.status_code, list(response.context["form"].errors)) == (422, ["text"])


def test_reply_where_nobody_wrote_is_unknown(mina: Person, client_of: ClientOf) -> None:
    attempt = written(mina)

    response = client_of(mina).post(reverse("reply", args=[attempt.key]), {"text": "Hello?"})

    assert response.status_code == 404


def test_sent_back_answer_is_answered_again(
    mina: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    attempt = written(mina)
    comment(ines, attempt, "sent-back")
    client = client_of(mina)

    page = client.get(attempt.get_absolute_url())
    asked = client.post(reverse("answer-again", args=[attempt.key]), follow=True).context["asked"]
    new = submit(asked, right_answer(asked))

    assert "Answer again, with a new question" in texts(page, "button")
    assert asked.again == attempt
    for seen in (client.get(attempt.get_absolute_url()), client.get(new.get_absolute_url())):
        assert "Answer again, with a new question" not in texts(seen, "button")
    links = client_of(ines).get(page_url(new, harbour)).content.decode()
    assert page_url(attempt, harbour) in links


def test_page_says_who_judged_and_what_the_site_had_said(
    mina: Person, ines: Person, client_of: ClientOf
) -> None:
    asked = ask(mina, KINDS["choose-the-mode"])
    attempt = submit(asked, right_answer(asked))
    said = Said(what="score", text="By luck.", score=30, key=KEY)
    made = review(ines, attempt, said)

    page = client_of(mina).get(attempt.get_absolute_url())

    day = f"{made.at.day} {made.at:%B %Y}"
    words = f"Ines Marlow judged it on {day}. The site had said: right."
    assert texts(page, "div", "verdict") == ["Partly right: 30 %"]
    assert words in texts(page, "p")


def test_solo_learner_is_told_that_nobody_reads_it(solo: Person, client_of: ClientOf) -> None:
    page = client_of(solo).get(written(solo).get_absolute_url()).content.decode()

    assert "You are in no cohort, so nobody will read it yet." in page


def test_queue_shows_own_cohorts_and_one_of_them(
    mina: Person, ines: Person, harbour: Cohort, client_of: ClientOf, lena: Person, slipway: Cohort
) -> None:
    slipway.instructors.add(ines)
    own, other = written(mina), written(lena)
    client, url = client_of(ines), reverse("reviews")

    shown = {
        query: client.get(url, {"cohort": query}).context["waiting"]
        for query in ("", str(slipway.pk), "0", "x")
    }

    assert shown == {
        "": [own, other],
        str(slipway.pk): [other],
        "0": [own, other],
        "x": [own, other],
    }


def test_queue_queries_do_not_grow(
    ines: Person,
    harbour: Cohort,
    client_of: ClientOf,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    client = client_of(ines)
    for name in ("Una Reed", "Piet Sloan"):
        written(learner(name, harbour))
        with django_assert_num_queries(5):  # session, person, cohorts, waiting, replies
            client.get(reverse("reviews"))


def test_attempt_queries_do_not_grow_with_its_reviews(
    mina: Person,
    ines: Person,
    harbour: Cohort,
    client_of: ClientOf,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    attempt = written(mina)
    client = client_of(ines)
    for number in range(3):
        review(ines, attempt, Said(what="comment", text="More.", key=str(number)))
        # session, person; learner and cohort with access; attempt, reviews, those read, again
        with django_assert_num_queries(9):
            client.get(page_url(attempt, harbour))
