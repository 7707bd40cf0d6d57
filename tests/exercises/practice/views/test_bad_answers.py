"""Nonsense for every ask of every drill: one sentence at its field, nothing recorded, all kept."""

import re
from collections.abc import Callable, Iterator

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from django.urls import reverse
from django.utils.html import escape

from course.cohorts.models import Person
from exercises.drills.asks import Amount, Ask, FreeText, Moment, Several
from exercises.drills.register import KINDS
from exercises.models import Attempt
from exercises.practice.attempts import ask
from tests.answers import right_answer, sent

ClientOf = Callable[[Person], Client]

TYPED = (
    "",
    " ",
    "\0",
    "x" * 10_000,
    "9" * 10_000,
    "-1",
    "1e400",
    "NaN",
    "١٢",
    "<b>1</b>",
    "00:00:61:00",
    "00:01:00;00",
    "99:99:99:99",
    "00:00:20:00 to 00:00:10:00",
)


def nonsense(asked: Ask, right: list[str]) -> Iterator[list[str]]:
    """What a browser might send by mistake or on purpose."""
    yield []
    yield from ([text] * max(1, len(right)) for text in TYPED if not wanted(asked, text))
    yield [*right, right[0]] if not isinstance(asked, Several) else [*right, "x"]
    if len(right) > 1 and not isinstance(asked, Several):
        yield right[:-1]
        yield [*right[:-1], "x"]


def wanted(asked: Ask, text: str) -> bool:
    """Whether some learner may well mean it."""
    return isinstance(asked, Amount) and text == "-1" and asked.least < 0


pytestmark = pytest.mark.database
SENTENCE = re.compile(r"[A-Z“'0-9].{10,180}\.")


@pytest.mark.parametrize("slug", sorted(KINDS))
def test_nonsense_is_told_at_its_field_and_nothing_is_lost(
    mina: Person, client_of: ClientOf, slug: str
) -> None:
    asked, client = ask(mina, KINDS[slug]), client_of(mina)
    right = sent(asked, right_answer(asked))
    url = reverse("drill-answer", args=[asked.token])
    for each in asked.as_question().asks:
        for values in nonsense(each, right[each.name]):
            response = client.post(url, {**right, each.name: values})
            form = response.context["form"]
            told = {name: list(errors) for name, errors in form.errors.items()}

            assert (response.status_code, list(told)) == (422, [each.name]), values
            assert [bool(SENTENCE.fullmatch(text)) for text in told[each.name]] == [True]
            assert form[each.name].value() == values
            assert {name: form[name].value() for name in right if name != each.name} == {
                name: typed for name, typed in right.items() if name != each.name
            }
            if isinstance(each, (Moment, Amount, FreeText)) and values:
                assert escape(values[0]) in response.content.decode()

    assert Attempt.objects.count() == 0


def test_file_in_place_of_an_answer_is_no_answer(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, KINDS["choose-the-mode"])
    url = reverse("drill-answer", args=[asked.token])
    response = client_of(mina).post(url, {"mode": SimpleUploadedFile("mode", b"assemble")})

    assert response.status_code == 422
    assert response.context["form"].errors == {
        "mode": ["Choose one answer. Nothing has been recorded yet."]
    }
    assert Attempt.objects.count() == 0
