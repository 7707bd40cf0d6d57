"""Pictures and sounds of lessons, as they are sent: to everybody, and only those of a lesson."""

from collections.abc import Callable, Iterator
from io import BytesIO
from pathlib import Path

import pytest
from django.core.cache import caches
from django.test import Client
from PIL import Image

from course.cohorts.models import Person
from course.lessons import shelf as shelving
from course.lessons.blocks.picture import PictureFigure
from course.lessons.blocks.sound import Heard
from course.lessons.shelf import Shelf
from tests.course.lessons.sample import LESSON, shelve

SHOWING = """
```picture
name = "two"
title = "Tracking set, and off"
caption = "Look."
scene = "winch"
panels = [{ line = "Set." }, { line = "Off.", look = { tracking = 55 } }]
```

```sound
name = "said"
title = "The keeper’s answer"
caption = "Listen."
map = "map"
start = 250
end = 300
says = { A = { lines = ["keeper-3"], begin = 12000 } }
```
"""


@pytest.fixture
def shelf(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Shelf]:
    """A course of one lesson that shows two pictures and a sound."""
    shelved = shelve(tmp_path, LESSON + SHOWING)
    assert shelved.problems == ()
    monkeypatch.setattr(shelving, "CONTENT", tmp_path)
    shelving.shelf.cache_clear()
    yield shelved
    shelving.shelf.cache_clear()


@pytest.fixture
def addresses(shelf: Shelf) -> list[str]:
    found: list[str] = []
    for part in shelf.lessons[0].all_parts():
        if isinstance(part, PictureFigure):
            found += [panel.url for panel in part.panels]
        elif isinstance(part, Heard):
            found.append(part.url)
    return found


def test_stranger_gets_pictures_and_sounds(client: Client, addresses: list[str]) -> None:
    responses = [client.get(address) for address in addresses]

    assert [(each.status_code, each["Content-Type"]) for each in responses] == [
        (200, "image/jpeg"),
        (200, "image/jpeg"),
        (200, "audio/wav"),
    ]
    assert {each["Cache-Control"] for each in responses} == {"public, max-age=31536000, immutable"}
    assert Image.open(BytesIO(responses[0].content)).size == (640, 480)


def test_anybody_may_keep_them_also_where_somebody_is_signed_in(
    mina: Person, client_of: Callable[[Person], Client], addresses: list[str]
) -> None:
    kept = client_of(mina).get(addresses[0])

    assert kept["Cache-Control"] == "public, max-age=31536000, immutable"
    assert not kept.has_header("Vary")


def test_address_does_not_tell_what_it_shows(addresses: list[str]) -> None:
    names = [address.removeprefix("/lessons/shown/").rstrip("/") for address in addresses]

    assert [len(name) for name in names] == [64, 64, 64]
    assert all(set(name) <= set("0123456789abcdef") for name in names)


def test_nothing_else_is_made(client: Client, shelf: Shelf) -> None:
    assert client.get(f"/lessons/shown/{'0' * 64}/").status_code == 404
    assert client.get("/lessons/shown/winch/").status_code == 404


def test_part_of_a_sound_is_sent(client: Client, addresses: list[str]) -> None:
    response = client.get(addresses[2], headers={"Range": "bytes=0-43"})

    assert (response.status_code, len(response.content)) == (206, 44)


def test_picture_is_kept(client: Client, shelf: Shelf, addresses: list[str]) -> None:
    name = next(iter(shelf.media))
    caches["made"].set(name, (b"kept", "image/jpeg"))

    assert client.get(addresses[0]).content == b"kept"

    caches["made"].delete(name)


def test_page_says_how_large_a_picture_is(client: Client, addresses: list[str]) -> None:
    html = client.get("/lessons/a-short-lesson/").content.decode()
    (first, second, sound) = addresses

    for address in (first, second):
        (tag,) = (each for each in html.split("<") if f'src="{address}"' in each)
        assert tag.startswith("img")
        assert 'width="640"' in tag
        assert 'height="480"' in tag
        assert 'loading="lazy"' in tag
        assert 'alt="On a monitor: the keeper at the winch. The ' in tag
    (tag,) = (each for each in html.split("<") if f'src="{sound}"' in each)
    assert tag.startswith("audio controls")
    assert "autoplay" not in tag
    assert 'preload="none"' in tag
