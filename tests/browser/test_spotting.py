"""Faults spotted by eye and by ear: by keyboard, in motion, in words, without JavaScript."""

import math
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Locator, Page, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Person
from exercises.drills.kind import Kind
from exercises.drills.register import KINDS
from exercises.models import Asked, Attempt
from exercises.practice.attempts import ask
from tests.answers import right_answer
from tests.browser.site import enter_as, quiet_page, stop_clock, violations, without_javascript

BY_EYE, BY_EAR = KINDS["spot-by-eye"], KINDS["spot-by-ear"]


def seed_of(kind: Kind, form: str) -> int:
    """The first seed whose question shows this form of medium."""
    return next(seed for seed in range(200) if kind.make(seed).media[0]["form"] == form)


def opened(page: Page, address: str, mina: Person, kind: Kind, form: str) -> Asked:
    asked = ask(mina, kind, seed=seed_of(kind, form))
    enter_as(page.context, address, mina)
    page.goto(f"{address}/drills/{kind.slug}/")
    return asked


def reach(page: Page, wanted: Locator) -> None:
    """By the tab key alone."""
    for _ in range(60):
        page.keyboard.press("Tab")
        if wanted.evaluate("element => element === document.activeElement"):
            return
    raise AssertionError("It is not reached by the keyboard.")


def answer_by_keyboard(page: Page, asked: Asked, right: dict[str, Any]) -> None:
    for part in asked.as_question().asks:
        radios = page.locator(f'input[name="{part.name}"]')
        reach(page, radios.first)
        page.keyboard.press("Space")
        for _ in range(list(part.every()).index(right[part.name])):
            page.keyboard.press("ArrowDown")
    reach(page, page.get_by_role("button", name="Answer", exact=True))
    page.keyboard.press("Enter")


@pytest.mark.parametrize(
    ("kind", "form"), [(BY_EYE, "still"), (BY_EYE, "motion"), (BY_EAR, "clip")]
)
def test_fault_is_spotted_by_keyboard(
    kind: Kind, form: str, live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    with quiet_page(context, live_server.url) as page:
        asked = opened(page, live_server.url, mina, kind, form)
        before = violations(page)
        answer_by_keyboard(page, asked, right_answer(asked))
        expect(page.locator(".verdict")).to_have_text("Right")
        after = violations(page)

    assert (before, after) == ([], [])
    assert Attempt.objects.get().right


@pytest.mark.parametrize(("kind", "form"), [(BY_EYE, "motion"), (BY_EAR, "clip")])
def test_question_is_asked_in_words(
    kind: Kind, form: str, live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    with quiet_page(context, live_server.url) as page:
        asked = opened(page, live_server.url, mina, kind, form)
        page.get_by_role("button", name="Describe it in words instead").click()
        expect(page.locator(".told li").first).to_be_visible()
        expect(page.locator(".practice img, .practice audio")).to_have_count(0)
        broken = violations(page)
        answer_by_keyboard(page, asked, right_answer(asked))
        expect(page.locator(".verdict")).to_have_text("Right")
        page.goto(f"{live_server.url}/record/")
        expect(page.get_by_text("described in words")).to_be_visible()

    assert broken == []


def test_pictures_move_when_asked_and_stop(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    with quiet_page(context, live_server.url) as page:
        stop_clock(page)
        opened(page, live_server.url, mina, BY_EYE, "motion")
        place = page.locator(".motion output")
        count, rate = page.locator(".motion").evaluate("({dataset: d}) => [+d.count, +d.rate]")
        picture = math.ceil(1000 / rate)  # in milliseconds
        page.clock.run_for(20 * picture)
        expect(place).to_have_text(f"Picture 1 of {count}")

        page.get_by_role("button", name="One on").click()
        expect(place).to_have_text(f"Picture 2 of {count}")
        page.get_by_role("button", name="One back").click()
        expect(place).to_have_text(f"Picture 1 of {count}")
        left = page.locator(".motion img").bounding_box()

        page.get_by_role("button", name="Play").click()
        page.clock.run_for(4 * picture)
        page.get_by_role("button", name="Stop").click()
        expect(place).to_have_text(f"Picture 5 of {count}")
        page.clock.run_for(20 * picture)
        expect(place).to_have_text(f"Picture 5 of {count}")

        page.get_by_role("button", name="Play").click()
        page.clock.run_for(count * picture)
        expect(place).to_have_text(f"Picture {count} of {count}")
        expect(page.get_by_role("button", name="Play")).to_be_visible()
        right = page.locator(".motion img").bounding_box()

    assert left
    assert right
    assert left["x"] - right["x"] == pytest.approx(320 * (count - 1), abs=1)


def test_pictures_are_stepped_only_where_motion_is_not_wanted(
    live_server: LiveServer, browser: Browser, mina: Person
) -> None:
    context = browser.new_context(reduced_motion="reduce")
    with quiet_page(context, live_server.url) as page:
        opened(page, live_server.url, mina, BY_EYE, "motion")

        expect(page.get_by_role("button", name="One on")).to_be_visible()
        expect(page.get_by_role("button", name="Play")).to_be_hidden()


def test_pictures_stand_in_a_row_without_javascript(
    live_server: LiveServer, browser: Browser, mina: Person
) -> None:
    with quiet_page(without_javascript(browser), live_server.url) as page:
        opened(page, live_server.url, mina, BY_EYE, "motion")
        row = page.locator(".motion img").bounding_box()
        expect(page.locator(".motion-controls")).to_be_hidden()

    assert row
    assert row["width"] == 320 * 28


def test_sound_is_fetched_only_when_it_is_played(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    fetched: list[str] = []
    with quiet_page(context, live_server.url) as page:
        page.on("request", lambda request: fetched.append(request.url))
        opened(page, live_server.url, mina, BY_EAR, "clip")  # loaded, with all that it asked for
        before = [url for url in fetched if "/shown/" in url]

        page.locator("audio").evaluate("audio => { audio.muted = true; return audio.play(); }")
        lasts = page.locator("audio").evaluate("audio => audio.duration")

    assert before == []
    assert 3 < lasts < 12
