"""A drill of one's own by keyboard alone: written, tried, published, answered by a learner."""

import re
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from urllib.parse import parse_qs

from playwright.sync_api import BrowserContext, Page, Response, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Cohort, Person
from exercises.models import Attempt
from tests.browser.site import enter_as, quiet_page, violations
from tests.browser.test_sitting import enter, reach
from tests.own import CUTAWAY, UNSEEN


def go(page: Page, selector: str) -> None:
    """Press what leads to another page."""
    reach(page, selector)
    enter(page)


def draws_all(typed: dict[str, str]) -> Callable[[Response], bool]:
    """Whether it is the drawing of all that was typed: while somebody types, others may come."""
    wanted = {(name, value) for name, value in typed.items() if value and name != "key"}

    def draws(response: Response) -> bool:
        sent = parse_qs(response.request.post_data or "")
        return wanted <= {(name, value) for name, (value, *_) in sent.items()}

    return draws


@contextmanager
def drawing_of(page: Page, typed: dict[str, str]) -> Iterator[None]:
    """What is typed within is drawn afterwards, and no other drawing is on its way."""
    with page.expect_response(draws_all(typed), timeout=120_000):
        yield
    expect(page.locator("form.htmx-request")).to_have_count(0)


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
        enter_as(page.context, live_server.url, ines)
        page.goto(f"{live_server.url}/desk/")
        go(page, "a[href='/desk/new/mode/']")
        expect(page.get_by_role("heading", name="Choose the mode: a new drill")).to_be_visible()
        with drawing_of(page, CUTAWAY):
            fill(page)
        expect(page.get_by_text("The right answer:")).to_be_visible()
        expect(page.locator("#drawn strong")).to_have_text("Insert picture")
        assert violations(page) == []
        go(page, "main form .row button:not([name])")
        expect(page.get_by_role("heading", name="A gull over the winch")).to_be_visible()

        go(page, "main .row a.button")
        reach(page, ".asks input")
        page.keyboard.press("ArrowDown")
        go(page, "main form > button")
        expect(page.locator(".verdict")).to_have_text("Right")
        assert violations(page) == []
        go(page, "main .row a.button")

        reach(page, "input[name=cohorts]")
        page.keyboard.press("Space")
        go(page, "form[action$='publish/'] button")
        expect(page.get_by_text("Published. It stands")).to_be_visible()
        assert violations(page) == []

    context.clear_cookies()
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/")
        go(page, "a[href^='/drills/own-']")
        reach(page, ".asks input")
        page.keyboard.press("ArrowDown")
        reach(page, ".practice form button:not(.linklike)")
        page.keyboard.press("Enter")
        expect(page.locator(".verdict")).to_have_text("Right")

    assert Attempt.objects.get().right


def enter_at_once(page: Page, typed: dict[str, str]) -> None:
    """Fill the form in without a keyboard."""
    for name, value in typed.items():
        field = page.locator(f"main [name='{name}']:not([type=hidden])")
        if field.count() and field.evaluate("field => field.tagName") == "SELECT":
            field.select_option(value)
        elif field.count():
            field.fill(value)


def test_bad_edit_is_found_while_it_is_typed(
    live_server: LiveServer, context: BrowserContext, ines: Person
) -> None:
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, ines)
        page.goto(f"{live_server.url}/desk/new/bad-edit/")
        with drawing_of(page, UNSEEN):
            enter_at_once(page, UNSEEN)
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
