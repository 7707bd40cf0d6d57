"""A disk that is full, really: pages are read on, and nothing that somebody typed is lost."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.disks import fill, small_disk
from tests.quay_street import quay_street
from tests.served import Visitor, heading, question_in_words, served
from tests.sites import Site

MEGABYTES = 64
NOTE = "The reel ends at the ferry; the left recorder has the master. " * 12
READ = ["/", "/lessons/", "/drills/", "/record/", "/sittings/", "/account/", "/verify/"]


@pytest.fixture
def site(tmp_path: Path) -> Iterator[Site]:
    """The demo, alone on a small disk. Its database is a file there, whatever the tests run on."""
    with small_disk(tmp_path / "disk", MEGABYTES) as disk:
        yield quay_street(disk / "data")


def filled(site: Site) -> Path:
    return fill(site.data.parent)


def statuses(visitor: Visitor, paths: list[str]) -> dict[str, int]:
    return {path: visitor.get(path).status for path in paths}


def test_pages_are_read_and_an_answer_is_kept_on_its_page(site: Site) -> None:
    with served(site) as address:
        wren = Visitor(address)
        wren.sign_in("wren")
        path, field = question_in_words(wren)
        attempts = len(site.tables()["exercises_attempt"])
        filling = filled(site)
        read = statuses(wren, READ)
        refused = wren.post(path, **{field: NOTE})
        filling.unlink()
        sent = wren.post(path, **{field: NOTE})

    assert read == dict.fromkeys(READ, 200)
    assert (refused.status, heading(refused.page)) == (503, "Nothing can be kept just now")
    assert f'name="{field}" value="{NOTE}"' in refused.page
    assert sent.status == 200
    assert len(site.tables()["exercises_attempt"]) == attempts + 1


def test_site_that_is_started_on_a_full_disk_is_read(site: Site) -> None:
    wren = Visitor("")
    with served(site) as wren.site:
        wren.sign_in("wren")
    filling = filled(site)
    with served(site) as wren.site:
        read = statuses(wren, READ)
        refused = wren.post("/account/in-words/", in_words="on")
        filling.unlink()
        kept = wren.post("/account/in-words/", in_words="on")

    assert read == dict.fromkeys(READ, 200)
    assert (refused.status, kept.status) == (503, 200)
