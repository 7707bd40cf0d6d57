"""A form's own key: sent twice it counts once, and no word that was dropped looks kept."""

import re
from collections.abc import Callable
from dataclasses import dataclass

import pytest
from django.http import HttpResponse
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.forms.fields import INCOMPLETE, SENT_BEFORE
from exercises.models import OwnDrill, Review, SignOff
from exercises.practice.attempts import ask, submit
from exercises.sign_offs.verbs import Decision, sign_off, withdraw
from tests.answers import right_answer, sent, wrong_answer
from tests.own import NOTE
from tests.pages import notices, texts

ClientOf = Callable[[Person], Client]
KEY = "0123456789abcdef" * 2
FREE = KINDS["free-answer"]


@dataclass
class Form:
    """A form that has a key: where it is sent, what is in it, where its words are kept."""

    url: str
    fields: dict[str, str]
    words: str
    kept: Callable[[], int]

    def send(self, client: Client, **fields: str) -> HttpResponse:
        return client.post(self.url, self.fields | {"key": KEY} | fields)  # type: ignore[return-value]


@pytest.fixture(params=["review", "sign-off", "own drill"])
def form(
    request: pytest.FixtureRequest, mina: Person, ines: Person, rafe: Person, harbour: Cohort
) -> Form:
    harbour.instructors.add(rafe)
    asked = ask(mina, FREE)
    attempt = submit(asked, right_answer(asked))
    forms = {
        "review": Form(
            reverse("review-attempt", args=[harbour.pk, mina.pk, attempt.key]),
            {"action": "comment", "text": "Name the mode."},
            "text",
            Review.objects.count,
        ),
        "sign-off": Form(
            reverse("sign-off-person", args=[harbour.pk, mina.pk]),
            {"state": "alone", "bench": "Bench 1", "note": "With me.", "named": mina.name},
            "note",
            SignOff.objects.count,
        ),
        "own drill": Form(reverse("new-own", args=["text"]), NOTE, "task", OwnDrill.objects.count),
    }
    return forms[str(request.param)]


def key_in(page: HttpResponse) -> str:
    """The key of the form that has come back."""
    found = re.search(r'name="key" value="([0-9a-f]{32})"', page.content.decode())
    assert found
    return found[1]


def errors(page: HttpResponse) -> list[str]:
    return texts(page, "p", "errorlist")


def test_same_form_twice_is_kept_once(form: Form, ines: Person, client_of: ClientOf) -> None:
    client = client_of(ines)

    assert [form.send(client).status_code for _ in range(2)] == [302, 302]
    assert form.kept() == 1


def test_other_words_under_a_used_key_are_refused_and_stay_in_the_form(
    form: Form, ines: Person, client_of: ClientOf
) -> None:
    client = client_of(ines)
    form.send(client)

    page = form.send(client, **{form.words: "Something else, of some length."})

    assert (page.status_code, errors(page), form.kept()) == (422, [SENT_BEFORE], 1)
    assert "Something else, of some length." in texts(page, "textarea")
    assert key_in(page) != KEY
    again = form.send(client, **{form.words: "Something else, of some length."}, key=key_in(page))
    assert (again.status_code, form.kept()) == (302, 2)


def test_key_that_another_instructor_has_used_is_refused_and_changed(
    form: Form, ines: Person, rafe: Person, client_of: ClientOf
) -> None:
    form.send(client_of(ines))
    client = client_of(rafe)

    page = form.send(client)

    assert (page.status_code, errors(page), form.kept()) == (422, [SENT_BEFORE], 1)
    assert form.send(client, key=key_in(page)).status_code == 302
    assert form.kept() == 2


@pytest.mark.parametrize("key", ["", "1", "Z" * 32, KEY + "0", KEY + "\n"])
def test_form_without_its_key_comes_back_with_one(
    key: str, form: Form, ines: Person, client_of: ClientOf
) -> None:
    client = client_of(ines)

    page = form.send(client, key=key)

    assert (page.status_code, errors(page), form.kept()) == (422, [INCOMPLETE], 0)
    assert form.fields[form.words] in texts(page, "textarea")
    assert form.send(client, key=key_in(page)).status_code == 302


def test_key_of_one_answers_review_keeps_nothing_about_another(
    mina: Person, tom: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client = client_of(ines)
    pages = []
    for person in (mina, tom):
        asked = ask(person, FREE)
        attempt = submit(asked, right_answer(asked))
        url = reverse("review-attempt", args=[harbour.pk, person.pk, attempt.key])
        pages.append(client.post(url, {"action": "comment", "text": "Good.", "key": KEY}))

    assert [page.status_code for page in pages] == [302, 422]
    assert Review.objects.get().attempt.person == mina


def test_second_reply_in_other_words_is_refused_and_stays_in_the_form(
    mina: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    asked = ask(mina, FREE)
    attempt = submit(asked, right_answer(asked))
    review = reverse("review-attempt", args=[harbour.pk, mina.pk, attempt.key])
    client_of(ines).post(review, {"action": "comment", "text": "Good.", "key": KEY})
    client, url = client_of(mina), reverse("reply", args=[attempt.key])

    first, same, other = (client.post(url, {"text": text}) for text in ("Yes.", "Yes.", "No."))

    assert [first.status_code, same.status_code, other.status_code] == [302, 302, 422]
    assert texts(other, "ul", "errorlist") == ["You have replied already. This is not kept."]
    assert "No." in texts(other, "textarea")
    assert Review.objects.get(what="reply").text == "Yes."


def test_second_reason_to_withdraw_is_refused_and_stays_in_the_form(
    mina: Person, ines: Person, rafe: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    harbour.instructors.add(rafe)
    made = sign_off(ines, mina, harbour, Decision(state="alone", bench="B", note="", key=KEY))
    first = withdraw(ines, made, "It was recorded over.")
    url = reverse("withdraw-sign-off", args=[harbour.pk, made.code])

    page = client_of(rafe).post(url, {"reason": "She moved away."})

    assert page.status_code == 422
    told = f"Ines Marlow withdrew it on {first.at:%-d %B %Y} already. Your reason is not kept."
    assert texts(page, "ul", "errorlist") == [told]
    assert "She moved away." in texts(page, "textarea")


@pytest.mark.parametrize("slug", sorted(KINDS))
def test_second_answer_to_a_question_says_that_it_is_not_kept(
    slug: str, mina: Person, client_of: ClientOf
) -> None:
    asked, client = ask(mina, KINDS[slug]), client_of(mina)
    url = reverse("drill-answer", args=[asked.token])
    first = sent(asked, right_answer(asked))
    other = {"text": "x" * 300} if KINDS[slug].by_hand else sent(asked, wrong_answer(asked))

    pages = [client.post(url, fields, follow=True) for fields in (first, first, other)]
    part = client.post(url, other, headers={"HX-Request": "true"})

    told = "You answered this question before, and that answer counts. This one is not kept."
    assert [notices(page) for page in pages] == [[], [], [told]]
    assert told in texts(part, "p", "notice")
