"""How much a browser must fetch before a page stands, as a server sends it."""

import gzip
import re
from collections.abc import Callable
from functools import cache
from pathlib import Path

import brotli
import pytest
from django.contrib.staticfiles import finders
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Person
from course.lessons.shelf import shelf
from exercises.drills.register import KINDS
from exercises.practice.attempts import ask, submit
from tests.answers import wrong_answer

ClientOf = Callable[[Person], Client]

HEAVIEST = 100_000


def assets(page: str) -> set[str]:
    """The static files that the page asks for."""
    return set(re.findall(r'(?:href|src)="/static/([^"]+)"', page))


@cache
def sent(name: str) -> int:
    """Bytes of a static file as it is sent: brotli, where that helps."""
    path = finders.find(name)
    assert path, f"{name} is not among the static files"
    content = Path(path).read_bytes()
    return len(content) if name.endswith(".woff2") else len(brotli.compress(content))


def weight(page: bytes) -> int:
    files = {name for name in assets(page.decode()) if not name.endswith(".svg")}
    return len(gzip.compress(page, 6)) + sum(map(sent, files))


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
