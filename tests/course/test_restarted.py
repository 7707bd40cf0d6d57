"""PostgreSQL is restarted, or away for a while, under a site that is in use."""

from collections.abc import Iterator
from functools import partial
from pathlib import Path

import pytest

from tests.postgresql import Server, own_server
from tests.quay_street import quay_street
from tests.served import Visitor, heading, question_in_words, served
from tests.sites import Site
from tests.threads import at_once

PAGES = ["/drills/", "/record/", "/account/", "/sittings/", "/lessons/"]
NOTE = "The reel ends at the ferry; the left recorder has the master. " * 12


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("restarted")


@pytest.fixture(scope="module")
def server(folder: Path) -> Iterator[Server]:
    with own_server(folder) as server:
        yield server


@pytest.fixture(scope="module")
def site(server: Server, folder: Path) -> Site:
    return quay_street(folder / "data", server.url)


def statuses(visitor: Visitor) -> set[int]:
    """Of 40 requests, eight at a time: as many as the site has threads, and each has been used."""
    ask = partial(visitor.get, "/account/")
    return {answer.status for _ in range(5) for answer in at_once([ask] * 8)}


def test_no_request_fails_once_the_database_is_back(site: Site, server: Server) -> None:
    with served(site) as address:
        wren = Visitor(address)
        wren.sign_in("wren")
        before = statuses(wren)
        server.restart()
        after = statuses(wren)

    assert (before, after) == ({200}, {200})


def test_while_it_is_away_a_sentence_says_so_and_no_word_is_lost(
    site: Site, server: Server
) -> None:
    with served(site) as address:
        wren = Visitor(address)
        wren.sign_in("wren")
        path, field = question_in_words(wren)
        attempts = len(site.tables()["exercises_attempt"])
        server.stop()
        away = [wren.get(page) for page in PAGES]
        refused = wren.post(path, **{field: NOTE})
        server.start()
        sent = wren.post(path, **{field: NOTE})

    assert {(page.status, heading(page.page)) for page in away} == {(503, "Back in a moment")}
    assert "The site can’t reach its database just now." in away[0].page
    assert (refused.status, f'name="{field}" value="{NOTE}"' in refused.page) == (503, True)
    assert sent.status == 200
    assert len(site.tables()["exercises_attempt"]) == attempts + 1
