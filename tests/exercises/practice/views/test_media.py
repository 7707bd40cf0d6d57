"""Pictures and sounds: who gets them, how they are sent, what is kept."""

import json
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from io import BytesIO
from pathlib import Path

import pytest
from django.core.cache import caches
from django.core.signing import Signer
from django.http import HttpResponse
from django.test import Client
from django.urls import reverse
from PIL import Image
from pytest_django import Settings

from course.cohorts.models import Person
from course.made import made_of, name_of
from exercises.drills.asks import Json
from exercises.drills.kind import Kind
from exercises.drills.media.rendering import Rendered, render
from exercises.drills.register import KINDS
from exercises.models import Asked
from exercises.practice.attempts import ask
from exercises.practice.media_address import token_of

ClientOf = Callable[[Person], Client]
SHOWING = {slug: kind for slug, kind in KINDS.items() if kind.make(0).media}
EACH_SHOWING = pytest.mark.parametrize("kind", SHOWING.values(), ids=SHOWING)
BY_EYE = KINDS["spot-by-eye"]


def url(asked: Asked, number: int = 0) -> str:
    return reverse("medium", args=[token_of(asked, number)])


def got(client: Client, asked: Asked, number: int = 0, **headers: str) -> HttpResponse:
    response = client.get(url(asked, number), headers=headers)
    assert isinstance(response, HttpResponse)
    return response


@EACH_SHOWING
def test_every_medium_is_sent_to_the_person_asked(
    kind: Kind, mina: Person, client_of: ClientOf
) -> None:
    asked = ask(mina, kind, seed=3)
    client = client_of(mina)
    forms = {"clip": "audio/wav"}

    sent = [got(client, asked, number) for number in range(len(asked.as_question().media))]

    types = [forms.get(medium["form"], "image/jpeg") for medium in asked.as_question().media]
    assert [response["Content-Type"] for response in sent] == types
    assert {response.status_code for response in sent} == {200}
    assert all(response.content for response in sent)


def test_instructor_of_the_learner_gets_it(mina: Person, ines: Person, client_of: ClientOf) -> None:
    assert got(client_of(ines), ask(mina, BY_EYE)).status_code == 200


def test_nobody_else_gets_it(
    mina: Person, tom: Person, rafe: Person, ada: Person, client_of: ClientOf
) -> None:
    asked = ask(mina, BY_EYE)
    clients = [client_of(tom), client_of(rafe), client_of(ada), Client()]

    assert [got(client, asked).status_code for client in clients] == [404] * 4


def test_instructor_gets_nothing_of_another_instructor(
    ines: Person, rafe: Person, client_of: ClientOf
) -> None:
    assert got(client_of(ines), ask(rafe, BY_EYE)).status_code == 404


@pytest.mark.parametrize(
    "make",
    [
        lambda asked: f"{asked.token}.0",
        lambda asked: token_of(asked, 0)[:-1],
        lambda asked: token_of(asked, 0).replace(".0:", ".1:"),
        lambda asked: Signer().sign(f"{asked.token}.0"),
        lambda asked: token_of(Asked(token="another"), 0),
        lambda asked: "x" * 3000,
        lambda asked: ":",
    ],
)
def test_token_that_was_never_given_is_unknown(
    make: Callable[[Asked], str], mina: Person, client_of: ClientOf
) -> None:
    token = make(ask(mina, BY_EYE))

    response = client_of(mina).get(reverse("medium", args=[token]))

    assert response.status_code == 404


def test_address_says_nothing_of_what_is_shown(mina: Person) -> None:
    asked = ask(mina, BY_EYE)

    assert token_of(asked, 4).rpartition(":")[0] == f"{asked.token}.4"


def test_page_holds_no_fact_of_what_is_shown(mina: Person, client_of: ClientOf) -> None:
    client = client_of(mina)
    for seed in range(12):
        asked = ask(mina, BY_EYE, seed=seed)
        page = client.get(reverse("drill", args=[BY_EYE.slug])).content.decode()
        facts = [f'"{name}"' for name in ("look", "tracking", "skew", "settling", "scene")]

        assert asked.question["situation"] not in page
        assert [fact for fact in facts if fact in page] == []
        Asked.objects.all().delete()


def test_faulty_and_clean_pictures_are_sent_alike(mina: Person, client_of: ClientOf) -> None:
    """By the same headers, but for their length; with nothing in the file but the picture."""
    client = client_of(mina)
    seen: dict[bool, set[tuple[str, ...]]] = {True: set(), False: set()}
    cleans = [BY_EYE.make(seed).right["fault"] == "nothing" for seed in range(40)]
    seeds = [seed for seed, clean in enumerate(cleans) if clean or seed < 12]
    for seed in seeds:
        asked = ask(mina, BY_EYE, seed=seed)
        response = got(client, asked)
        named = {k: v for k, v in response.headers.items() if k != "Content-Length"}
        picture = Image.open(BytesIO(response.content))
        notes = set(map(str, picture.info)) - {"jfif", "jfif_version", "jfif_unit", "jfif_density"}
        clean = asked.question["right"]["fault"] == "nothing"
        seen[clean].add((json.dumps(named, sort_keys=True), *sorted(notes)))
        Asked.objects.all().delete()

    assert seen[True] == seen[False]
    assert len(seen[True]) == 1


def test_no_browser_keeps_it_for_whoever_comes_next(mina: Person, client_of: ClientOf) -> None:
    response = got(client_of(mina), ask(mina, BY_EYE))

    assert response["Cache-Control"] == "private, no-store"
    assert "Content-Disposition" not in response


def test_it_is_made_once(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, BY_EYE)
    made = got(client_of(mina), asked).content
    name = name_of(asked.as_question().media[0])

    caches["made"].set(name, (b"kept", "image/jpeg"))

    assert made != b"kept"
    assert got(client_of(mina), asked).content == b"kept"
    caches["made"].delete(name)


def test_words_are_not_what_it_is_kept_by() -> None:
    first = BY_EYE.make(3).media[0]

    assert name_of({**first, "title": "x", "words": []}) == name_of(first)
    assert name_of({**first, "size": [16, 16]}) != name_of(first)


@pytest.mark.parametrize("broken", ["a file", "a folder that can't be written to"])
def test_cache_that_cannot_be_used_still_answers(
    broken: str, mina: Person, client_of: ClientOf, settings: Settings, tmp_path: Path
) -> None:
    place = tmp_path / "made"
    if broken == "a file":
        place.write_text("in the way")
    else:
        place = Path("/proc/made")
    settings.CACHES = {**settings.CACHES, "made": {**settings.CACHES["made"], "LOCATION": place}}

    response = got(client_of(mina), ask(mina, BY_EYE))

    assert (response.status_code, response["Content-Type"]) == (200, "image/jpeg")


def test_many_at_once_get_the_same_and_it_is_made_once(
    mina: Person, monkeypatch: pytest.MonkeyPatch
) -> None:
    medium, drawn = ask(mina, BY_EYE).as_question().media[0], []

    def counted(medium: Json) -> Rendered:
        drawn.append(medium)
        return render(medium)

    monkeypatch.setattr("course.made.render", counted)
    caches["made"].clear()
    with ThreadPoolExecutor(4) as pool:
        made = set(pool.map(made_of, [medium] * 4))

    assert (len(made), len(drawn)) == (1, 1)


def test_head_has_the_headers_alone(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, BY_EYE)

    whole = got(client_of(mina), asked)
    head = client_of(mina).head(url(asked))

    assert (head.status_code, head.content) == (200, b"")
    assert head["Content-Length"] == whole["Content-Length"] == str(len(whole.content))


def test_other_methods_are_refused(mina: Person, client_of: ClientOf) -> None:
    assert client_of(mina).post(url(ask(mina, BY_EYE))).status_code == 405


@pytest.mark.parametrize(
    ("asked_for", "start", "end"),
    [
        ("bytes=0-", 0, None),
        ("bytes=0-99", 0, 100),
        ("bytes=100-100", 100, 101),
        ("bytes=-50", -50, None),
        ("bytes=100-99999999", 100, None),
    ],
)
def test_part_is_sent(
    asked_for: str, start: int, end: int | None, mina: Person, client_of: ClientOf
) -> None:
    asked = ask(mina, BY_EYE)
    whole = got(client_of(mina), asked).content

    part = got(client_of(mina), asked, range=asked_for)

    expected = whole[start:end]
    first = len(whole) + start if start < 0 else start
    last = first + len(expected) - 1
    assert (part.status_code, part.content) == (206, expected)
    assert part["Content-Range"] == f"bytes {first}-{last}/{len(whole)}"


@pytest.mark.parametrize("asked_for", ["bytes=99999999-", "bytes=-0"])
def test_part_beyond_the_end_is_refused(asked_for: str, mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, BY_EYE)
    whole = got(client_of(mina), asked).content

    part = got(client_of(mina), asked, range=asked_for)

    assert (part.status_code, part["Content-Range"]) == (416, f"bytes */{len(whole)}")


@pytest.mark.parametrize(
    "asked_for",
    [
        "bytes=5-2",
        "bytes=-",
        "bytes=a-b",
        "lines=0-3",
        "bytes=0-1,4-5",
        "bytes=" + "9" * 40 + "-",
    ],
)
def test_range_without_sense_gets_the_whole(
    asked_for: str, mina: Person, client_of: ClientOf
) -> None:
    response = got(client_of(mina), ask(mina, BY_EYE), range=asked_for)

    assert (response.status_code, "Content-Range" in response) == (200, False)


def test_it_is_not_compressed_again(mina: Person, client_of: ClientOf) -> None:
    headers = {"accept-encoding": "gzip"}
    response = client_of(mina).get(url(ask(mina, BY_EYE)), headers=headers)

    assert "Content-Encoding" not in response
