"""A lesson with every block: on a phone and a desk, light and dark, nothing moves or runs over."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect
from pytest_django.live_server_helper import LiveServer

from course.lessons import shelf as shelving
from tests.browser.site import quiet_page, violations
from tests.browser.test_every_page import SHIFT
from tests.course.lessons.blocks.gallery import GALLERY, IDS
from tests.course.lessons.sample import shelve


@pytest.fixture
def gallery(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    assert shelve(tmp_path, GALLERY).problems == ()
    monkeypatch.setattr(shelving, "CONTENT", tmp_path)
    shelving.shelf.cache_clear()
    yield
    shelving.shelf.cache_clear()


def look_at_all(page: Page) -> None:
    """Come to every block, and wait for its pictures."""
    for name in IDS:
        page.locator(f"#{name}").scroll_into_view_if_needed()
        for picture in page.locator(f"#{name} img").all():
            picture.scroll_into_view_if_needed()
            expect(picture).to_have_js_property("complete", True)
            expect(picture).not_to_have_js_property("naturalWidth", 0)


@pytest.mark.parametrize(("width", "scheme"), [(1280, "light"), (390, "light"), (390, "dark")])
def test_figures_fit_and_keep_still(
    live_server: LiveServer,
    new_context: Callable[..., BrowserContext],
    gallery: None,
    width: int,
    scheme: str,
) -> None:
    context = new_context(viewport={"width": width, "height": 900}, color_scheme=scheme)
    with quiet_page(context, live_server.url) as page:
        page.goto(f"{live_server.url}/lessons/a-short-lesson/")
        look_at_all(page)

        assert page.evaluate(SHIFT) == 0
        assert page.evaluate("document.documentElement.scrollWidth") == width
        boxes = [page.locator(f"#{name}").bounding_box() for name in IDS]
        assert all(box and box["x"] >= 0 and box["x"] + box["width"] <= width for box in boxes)
        assert violations(page) == []


def test_wide_drawing_is_moved_by_keyboard(
    live_server: LiveServer, new_context: Callable[..., BrowserContext], gallery: None
) -> None:
    context = new_context(viewport={"width": 390, "height": 900})
    with quiet_page(context, live_server.url) as page:
        page.goto(f"{live_server.url}/lessons/a-short-lesson/")
        frame = page.get_by_role("region", name="From the player to the recorder")
        frame.focus()
        page.keyboard.press("ArrowRight")

        expect(frame).not_to_have_js_property("scrollLeft", 0)
