"""A drill of one's own by keyboard alone: written, tried, published, answered by a learner."""

import re

from playwright.sync_api import BrowserContext, Page, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Cohort, Person
from exercises.models import Attempt
from tests.browser.site import quiet_page, sign_in, violations
from tests.browser.test_sitting import TABS
from tests.own import CUTAWAY, UNSEEN


def reach(page: Page, selector: str) -> None:
    """Tab to an element, as somebody without a mouse does."""
    for _ in range(2 * TABS):
        page.keyboard.press("Tab")
        if page.evaluate("wanted => document.activeElement.matches(wanted)", selector):
            return
    raise AssertionError(f"{selector} can’t be reached by Tab.")


def press(page: Page, selector: str) -> None:
    reach(page, selector)
    page.keyboard.press("Enter")


def fill(page: Page) -> None:
    """Type the drill into the form, from its first field to its last."""
    names = page.eval_on_selector_all(
        "main form [name]:not([type=hidden]):not(button)", "all => all.map(each => each.name)"
    )
    for name in names:
        if not CUTAWAY.get(name):
            continue
        reach(page, f"[name='{name}']")
        if page.evaluate("document.activeElement.tagName") == "SELECT":
            wanted = page.locator(f"[name='{name}'] option[value='{CUTAWAY[name]}']")
            page.keyboard.type(wanted.inner_text())
        else:
            page.keyboard.press("ControlOrMeta+A")
            page.keyboard.type(CUTAWAY[name])


def test_own_drill_by_keyboard_alone(
    live_server: LiveServer, context: BrowserContext, ines: Person, mina: Person, harbour: Cohort
) -> None:
    with quiet_page(context, live_server.url) as page:
        sign_in(page, live_server.url, ines)
        page.goto(f"{live_server.url}/desk/")
        press(page, "a[href='/desk/new/mode/']")
        expect(page.get_by_role("heading", name="Choose the mode: a new drill")).to_be_visible()
        fill(page)
        expect(page.get_by_text("The right answer:")).to_be_visible()
        expect(page.locator("#drawn strong")).to_have_text("Insert picture")
        assert violations(page) == []
        press(page, "main form .row button:not([name])")
        expect(page.get_by_role("heading", name="A gull over the winch")).to_be_visible()

        press(page, "main .row a.button")
        page.wait_for_url("**/try/")
        reach(page, ".asks input")
        page.keyboard.press("ArrowDown")
        press(page, "main form > button")
        expect(page.locator(".verdict")).to_have_text("Right")
        assert violations(page) == []
        press(page, "main .row a.button")
        page.wait_for_url(re.compile(r"/desk/\d+/$"))

        reach(page, "input[name=cohorts]")
        page.keyboard.press("Space")
        press(page, "form[action$='publish/'] button")
        expect(page.get_by_text("Published. It stands")).to_be_visible()
        assert violations(page) == []

    context.clear_cookies()
    with quiet_page(context, live_server.url) as page:
        sign_in(page, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/")
        press(page, "a[href^='/drills/own-']")
        page.wait_for_url("**/drills/own-*/")
        reach(page, ".asks input")
        page.keyboard.press("ArrowDown")
        press(page, ".practice form button:not(.linklike)")
        expect(page.locator(".verdict")).to_have_text("Right")

    assert Attempt.objects.get().right


def test_bad_edit_is_found_while_it_is_typed(
    live_server: LiveServer, context: BrowserContext, ines: Person
) -> None:
    with quiet_page(context, live_server.url) as page:
        sign_in(page, live_server.url, ines)
        page.goto(f"{live_server.url}/desk/new/bad-edit/")
        for name, typed in UNSEEN.items():
            field = page.locator(f"main [name='{name}']:not([type=hidden])")
            if field.count() and field.evaluate("field => field.tagName") == "SELECT":
                field.select_option(typed)
            elif field.count():
                field.fill(typed)
        answers = page.locator("#drawn dl").first.locator("dd")
        expect(answers).to_have_text(
            [
                "There are no pulses on part of the film",
                "Edit 2",
                "Go back before it and assemble all that follows again",
            ]
        )
        assert violations(page) == []

        page.select_option("[name=edit_1_mode]", "insert-both")
        expect(page.locator("#drawn .caution")).to_have_text(
            re.compile("^Edit 1 and edit 2 are to blame, and a drill asks for one.")
        )
