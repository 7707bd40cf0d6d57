"""Controls in a browser: turned by the keyboard, and answered without JavaScript."""

import re

from playwright.sync_api import Browser, BrowserContext, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Person
from exercises.drills.register import KINDS
from exercises.models import Attempt
from exercises.practice.attempts import ask
from tests.browser.site import enter_as, quiet_page, violations, without_javascript

TRACKING = KINDS["set-tracking"]


def test_tracking_is_turned_by_keyboard_to_the_best_picture(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    asked = ask(mina, TRACKING, seed=4)
    question = asked.as_question()
    turn = question.right["tracking"] - question.key["start"]
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/{TRACKING.slug}/")
        slider = page.get_by_role("slider")
        slider.focus()
        pages, steps = divmod(abs(turn), 5)
        for _ in range(pages):
            page.keyboard.press("PageUp" if turn > 0 else "PageDown")
        for _ in range(steps):
            page.keyboard.press("ArrowRight" if turn > 0 else "ArrowLeft")

        words = question.asks[0].in_words(question.right["tracking"])
        expect(slider).to_have_attribute("aria-valuetext", re.compile(f"^{re.escape(words)}"))
        page.keyboard.press("Tab")
        page.keyboard.press("Enter")
        expect(page.locator(".verdict")).to_have_text("Right")

    assert (Attempt.objects.get().answer, Attempt.objects.get().score) == (question.right, 100)


def test_tracking_is_set_without_javascript(
    live_server: LiveServer, browser: Browser, mina: Person
) -> None:
    best = ask(mina, TRACKING, seed=4).as_question().right["tracking"]
    with (
        without_javascript(browser) as context,
        quiet_page(context, live_server.url) as page,
    ):
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/{TRACKING.slug}/")
        page.locator('input[name="tracking"]').fill(str(best))
        page.get_by_role("button", name="Answer", exact=True).click()

        expect(page.locator(".verdict")).to_have_text("Right")


def test_next_question_is_turned_too(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    ask(mina, TRACKING, seed=4)
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/{TRACKING.slug}/")
        page.get_by_role("button", name="Answer", exact=True).click()
        page.get_by_role("button", name="One more like this").click()
        page.get_by_role("slider").press("Home")

        expect(page.locator(".positions > li:visible")).to_have_attribute("value", "0")


def test_control_is_turned_by_words_alone(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    question = ask(mina, TRACKING, seed=4).as_question()
    words = question.media[0]["words"]
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/{TRACKING.slug}/")
        page.get_by_role("button", name="Describe it in words instead").click()
        expect(page.locator(".screen")).to_have_count(0)
        slider = page.get_by_role("slider")
        for key, told in (("End", words[-1]), ("Home", words[0])):
            slider.press(key)
            expect(slider).to_have_attribute("aria-valuetext", re.compile(f"{re.escape(told)}$"))
        assert violations(page) == []
