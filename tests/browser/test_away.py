"""A real site is stopped, or its database is, while somebody answers: one attempt in the end."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.browser.site import follow, violations
from tests.postgresql import own_server
from tests.quay_street import quay_street
from tests.served import QUAY_STREETS_PASSWORD, free_port, served
from tests.sites import Site

NOTE = "The reel ends at the ferry; the left recorder has the master, the right one has the copy."
KEPT = "Your answer is kept here. It’s sent as soon as the site can be reached."
PATIENCE = 90_000  # milliseconds, to the next try and over it


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return tmp_path / "data"


@pytest.fixture
def page(context: BrowserContext) -> Iterator[Page]:
    page = context.new_page()
    yield page
    page.close()


def open_question(page: Page, address: str, name: str = "wren") -> str:
    """A learner signs in and looks at a question; its token."""
    page.goto(f"{address}/sign-in/")
    page.get_by_label("Sign-in name").fill(name)
    page.get_by_label("Password").fill(QUAY_STREETS_PASSWORD)
    follow(page.get_by_role("button", name="Sign in"))
    page.goto(f"{address}/drills/free-answer/")
    path = page.locator("form[data-answer]").get_attribute("action") or ""
    return path.strip("/").rpartition("/")[2]


def answer(page: Page) -> None:
    page.get_by_role("textbox").fill(NOTE)
    page.get_by_role("button", name="Answer", exact=True).click()


def attempts(site: Site, token: str) -> list[str]:
    rows = site.tables()["exercises_attempt"].values()
    return [str(row["answer"]) for row in rows if row["key"] == token]


def expect_sent_once(page: Page, site: Site, token: str) -> None:
    expect(page.locator(".verdict")).to_be_visible(timeout=PATIENCE)
    [kept] = attempts(site, token)
    assert NOTE in kept


def test_site_that_is_stopped_gets_answers_when_it_is_back(
    page: Page, new_context: Callable[[], BrowserContext], folder: Path
) -> None:
    """By the page that is still open, and by one that was closed meanwhile and is opened again."""
    site, port = quay_street(folder), free_port()
    elsewhere = new_context()
    closed = elsewhere.new_page()
    with served(site, port=port) as address:
        tokens = [open_question(page, address), open_question(closed, address, "sorrel")]
    for each in (page, closed):
        answer(each)
        expect(each.locator(".unsent p")).to_have_text(KEPT)
    closed.close()
    assert [attempts(site, token) for token in tokens] == [[], []]

    with served(site, port=port):
        expect_sent_once(page, site, tokens[0])
        again = elsewhere.new_page()
        again.goto(f"{address}/drills/free-answer/")
        expect_sent_once(again, site, tokens[1])


def test_site_without_its_database_gets_it_when_that_is_back(
    page: Page, folder: Path, tmp_path: Path
) -> None:
    with own_server(tmp_path) as server:
        site = quay_street(folder, server.url)
        with served(site) as address:
            token = open_question(page, address)
            server.stop()
            answer(page)
            expect(page.locator(".unsent p")).to_have_text(KEPT)
            assert violations(page) == []
            page.reload()
            expect(page.get_by_role("heading")).to_have_text("Back in a moment")
            expect(page.get_by_text("nor an answer that your browser keeps")).to_be_visible()

            server.start()
            page.reload()
            expect_sent_once(page, site, token)
