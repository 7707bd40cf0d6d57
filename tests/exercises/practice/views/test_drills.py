"""A drill in the browser: the question, the answer, what comes back for a bad one."""

from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse

from course.cohorts.equipping import set_figures
from course.cohorts.models import Cohort, Person
from exercises.drills.asks import Choice
from exercises.drills.register import KINDS
from exercises.models import Asked, Attempt
from exercises.practice.attempts import ask, submit
from tests.answers import right_answer, sent, wrong_answer
from tests.pages import texts

ClientOf = Callable[[Person], Client]
HTMX = {"hx-request": "true"}


@pytest.fixture(params=sorted(KINDS))
def slug(request: pytest.FixtureRequest) -> str:
    return str(request.param)


def answer_url(asked: Asked) -> str:
    return reverse("drill-answer", args=[asked.token])


def test_drill_shows_its_open_question_again(mina: Person, client_of: ClientOf, slug: str) -> None:
    first = client_of(mina).get(reverse("drill", args=[slug]))
    again = client_of(mina).get(reverse("drill", args=[slug]))

    asked = Asked.objects.get()
    assert first.context["asked"] == again.context["asked"] == asked
    assert answer_url(asked) in first.content.decode()


def test_drill_page_does_not_hold_the_seed(mina: Person, client_of: ClientOf, slug: str) -> None:
    page = client_of(mina).get(reverse("drill", args=[slug])).content.decode()

    assert str(Asked.objects.get().seed) not in page


def test_answer_leads_to_the_attempt(mina: Person, client_of: ClientOf, slug: str) -> None:
    asked = ask(mina, KINDS[slug])

    response = client_of(mina).post(answer_url(asked), sent(asked, right_answer(asked)))

    attempt = Attempt.objects.get()
    assert attempt.right != KINDS[slug].by_hand
    assert (response.status_code, response["Location"]) == (302, attempt.get_absolute_url())


def test_answer_by_htmx_gives_the_feedback_alone(
    mina: Person, client_of: ClientOf, slug: str
) -> None:
    asked = ask(mina, KINDS[slug])

    response = client_of(mina).post(
        answer_url(asked), sent(asked, wrong_answer(asked)), headers=HTMX
    )

    page = response.content.decode()
    assert response.status_code == 200
    said = any(words in page for words in ("Not right", "Partly right", "Waits for"))
    assert ("<html" in page, said) == (False, True)


def test_answer_twice_gives_the_same_page(mina: Person, client_of: ClientOf, slug: str) -> None:
    asked = ask(mina, KINDS[slug])
    client = client_of(mina)

    first = client.post(answer_url(asked), sent(asked, wrong_answer(asked)), follow=True)
    second = client.post(answer_url(asked), sent(asked, right_answer(asked)), follow=True)

    assert second.redirect_chain == first.redirect_chain
    assert second.context["attempt"] == first.context["attempt"] == Attempt.objects.get()


@pytest.mark.parametrize("bad", ["", "not-an-option", "x" * 10_000, "\x00"])
def test_answer_that_is_no_choice_is_refused(
    mina: Person, client_of: ClientOf, slug: str, bad: str
) -> None:
    asked = ask(mina, KINDS[slug])
    typed = dict.fromkeys(right_answer(asked), bad)

    response = client_of(mina).post(answer_url(asked), typed)

    assert response.status_code == 422
    assert response.context["asked"] == asked
    assert all(len(errors) == 1 for errors in response.context["form"].errors.values())
    assert Attempt.objects.count() == 0


def test_answer_with_a_field_missing_keeps_the_others(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, KINDS["spot-the-bad-edit"])
    typed = right_answer(asked)
    missing, _ = typed.popitem()

    response = client_of(mina).post(answer_url(asked), typed)

    form = response.context["form"]
    assert (response.status_code, list(form.errors)) == (422, [missing])
    assert {name: form[name].value() for name in typed} == {name: [typed[name]] for name in typed}


def test_answer_to_somebody_elses_question_is_unknown(
    mina: Person, tom: Person, client_of: ClientOf
) -> None:
    asked = ask(mina, KINDS["choose-the-mode"])

    response = client_of(tom).post(answer_url(asked), sent(asked, right_answer(asked)))

    assert (response.status_code, Attempt.objects.count()) == (404, 0)


def test_answer_to_an_unknown_token_is_unknown(mina: Person, client_of: ClientOf) -> None:
    response = client_of(mina).post(reverse("drill-answer", args=["no-such-token"]), {})

    assert response.status_code == 404


def test_answer_by_a_stranger_asks_them_to_sign_in(mina: Person) -> None:
    asked = ask(mina, KINDS["choose-the-mode"])

    response = Client().post(answer_url(asked), sent(asked, right_answer(asked)))

    assert (response.status_code, Attempt.objects.count()) == (302, 0)
    assert response["Location"].startswith(reverse("sign-in"))


def test_answer_page_by_link_leads_on(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, KINDS["choose-the-mode"])
    before = client_of(mina).get(answer_url(asked))
    submit(asked, right_answer(asked))
    after = client_of(mina).get(answer_url(asked))

    assert before["Location"] == reverse("drill", args=[asked.drill])
    assert after["Location"] == reverse("attempt", args=[asked.token])


def test_one_more_is_a_new_question(mina: Person, client_of: ClientOf, slug: str) -> None:
    asked = ask(mina, KINDS[slug])
    submit(asked, right_answer(asked))

    response = client_of(mina).post(reverse("drill-ask", args=[slug]), headers=HTMX)

    new = Asked.objects.open().get()
    assert response.status_code == 200
    assert (new != asked, answer_url(new) in response.content.decode()) == (True, True)


def test_drill_of_no_kind_is_unknown(mina: Person, client_of: ClientOf) -> None:
    client = client_of(mina)

    assert client.get(reverse("drill", args=["no-such-drill"])).status_code == 404
    assert client.post(reverse("drill-ask", args=["no-such-drill"])).status_code == 404


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_feedback_names_what_was_chosen_and_what_is_right(
    mina: Person, client_of: ClientOf, slug: str, seed: int
) -> None:
    asked = ask(mina, KINDS[slug], seed=seed)
    answer, right = wrong_answer(asked), asked.as_question().right

    page = client_of(mina).post(answer_url(asked), sent(asked, answer), headers=HTMX)

    told = " ".join(texts(page, "section"))
    choices = [each for each in asked.as_question().asks if isinstance(each, Choice)]
    words = [each.in_words(given[each.name]) for each in choices for given in (answer, right)]
    assert [each for each in words if each not in told] == []


@pytest.fixture
def bare_bench(harbour: Cohort) -> None:
    """A bench without meters, and otherwise the usual one at 525 lines."""
    figures = {"pre_roll": 5, "source_run_up": 10, "lock": 150, "relock": 30, "erase_gap": 60}
    told = {"name": "Bench 2", "line_system": "525", "meters": []}
    set_figures(harbour.instructors.get(), harbour, {**told, **figures})


@pytest.mark.usefixtures("bare_bench")
def test_drills_say_which_are_not_on_the_bench(mina: Person, client_of: ClientOf) -> None:
    response = client_of(mina).get(reverse("drills"))

    assert response.context["not_here"] == {"set-picture-level", "set-sound-level"}
    assert response.content.decode().count("Not on your bench: it lacks the meter.") == 2


@pytest.mark.usefixtures("bare_bench")
def test_feedback_names_the_figures_of_the_bench(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, KINDS["choose-the-mode"])
    attempt = submit(asked, right_answer(asked))
    page = client_of(mina).get(attempt.get_absolute_url()).content.decode()

    figures = "29.97 frames a second, non-drop time code, pre-roll 5 seconds"
    assert f"Judged by your bench’s figures: {figures}" in " ".join(page.split())
