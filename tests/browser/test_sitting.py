"""A sitting, from the first to what it came to: by keyboard alone, and without scripts."""

import re

from playwright.sync_api import Browser, BrowserContext, Page, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Person
from exercises.models import Asked, Attempt, Sitting
from tests.answers import right_answer, sent
from tests.browser.site import enter_as, follow, quiet_page, violations, without_javascript

TABS = 160  # more than any of these pages has things to tab to


def reach(page: Page, selector: str) -> None:
    """Tab to an element, as somebody without a mouse does."""
    for _ in range(TABS):
        page.keyboard.press("Tab")
        if page.evaluate("wanted => document.activeElement.matches(wanted)", selector):
            return
    raise AssertionError(f"{selector} can’t be reached by Tab.")


def begin(page: Page, address: str) -> None:
    """Five questions on what the bench can’t do: every one is a single choice."""
    page.goto(f"{address}/sittings/")
    reach(page, 'input[name="length"]')
    page.keyboard.press("ArrowLeft")
    reach(page, 'input[name="skills"][value="what-the-bench-cant-do"]')
    page.keyboard.press("Space")
    reach(page, "main button")
    enter(page)


def enter(page: Page) -> None:
    """The Enter key, on what leads to another page."""
    with page.expect_navigation():
        page.keyboard.press("Enter")


def test_set_by_keyboard_alone(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        begin(page, live_server.url)
        for number in range(1, 6):
            expect(page.get_by_text(f"Question {number} of 5")).to_be_visible()
            assert violations(page) == []
            reach(page, ".asks input")
            page.keyboard.press("Space")
            reach(page, ".practice form button:not(.linklike)")
            page.keyboard.press("Enter")
            expect(page.locator(".verdict")).to_be_focused()
            reach(page, ".row > a.button")
            enter(page)

        expect(page.get_by_role("heading", name="What the sitting came to")).to_be_visible()
        assert page.locator(".debrief dt").all_inner_texts() == ["Tried", "Happened", "Why", "Next"]
        assert violations(page) == []

    sitting = Sitting.objects.get()
    assert (sitting.length, sitting.is_open, Attempt.objects.count()) == (5, False, 5)


def test_set_without_javascript_goes_on_where_it_was_left(
    live_server: LiveServer, browser: Browser, mina: Person
) -> None:
    with (
        without_javascript(browser) as context,
        quiet_page(context, live_server.url) as page,
    ):
        enter_as(page.context, live_server.url, mina)
        begin(page, live_server.url)
        expect(page.get_by_text("Question 1 of 5")).to_be_visible()
        answer(page)
        expect(page.locator(".verdict")).to_have_text("Right")
        page.goto(f"{live_server.url}/")
        follow(page.get_by_role("link", name="go on with it"))
        expect(page.get_by_text("Question 2 of 5")).to_be_visible()
        answer(page)
        page.go_back()
        page.go_forward()
        follow(page.get_by_role("button", name="Stop here"))

        expect(page).to_have_url(re.compile("/sittings/"))
        expect(page.locator(".debrief")).to_contain_text("2 of 5 questions")

    assert [attempt.right for attempt in Attempt.objects.all()] == [True, True]


def answer(page: Page) -> None:
    """The right one of the single choice that is asked."""
    asked = Asked.objects.open().get()
    ((value,),) = sent(asked, right_answer(asked)).values()
    page.locator(f'.asks input[value="{value}"]').check()
    follow(page.get_by_role("button", name="Answer", exact=True))
