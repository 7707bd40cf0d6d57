"""What comes out of a printer."""

import re
from collections.abc import Callable

import pytest
from django.urls import reverse
from playwright.sync_api import BrowserContext, Page, PdfMargins
from pytest_django.live_server_helper import LiveServer

from course.cohorts.benches import usual_bench
from course.cohorts.models import Cohort, Person
from tests.browser.site import enter_as

MARGIN: PdfMargins = {"top": "14mm", "bottom": "14mm", "left": "14mm", "right": "14mm"}
LONGEST_RULES = "\n".join(["Sign in at the office before you switch on, and out again. " * 2] * 10)
HIDDEN = ".masthead, .colophon, form, .placed-drill, .contents, .neighbours, .practise"


def pages(page: Page, paper: str) -> int:
    return len(re.findall(rb"/Type\s*/Page\b", page.pdf(format=paper, margin=MARGIN)))


@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_checklist_fits_one_sheet(
    live_server: LiveServer, context: BrowserContext, harbour: Cohort, mina: Person, paper: str
) -> None:
    bench = usual_bench()
    bench.name, bench.who_to_ask, bench.local_rules = "Bench 2", "Orla " * 24, LONGEST_RULES
    bench.save()
    harbour.bench = bench
    harbour.save()
    page = context.new_page()
    enter_as(page.context, live_server.url, mina)
    page.goto(live_server.url + reverse("lesson-checklist", args=["your-first-bench-day"]))

    assert pages(page, paper) == 1


def test_lesson_prints_black_on_white_without_what_is_for_the_screen(
    live_server: LiveServer, new_context: Callable[..., BrowserContext], mina: Person
) -> None:
    page = new_context(color_scheme="dark").new_page()
    enter_as(page.context, live_server.url, mina)
    page.goto(live_server.url + reverse("lesson", args=["assemble-and-insert"]))
    page.emulate_media(media="print", color_scheme="dark")
    colour = "element => getComputedStyle(element).color"
    shown = f"() => [...document.querySelectorAll('{HIDDEN}')].filter(e => e.offsetParent).length"

    assert page.evaluate(shown) == 0
    assert page.locator("main p").first.evaluate(colour) == "rgb(0, 0, 0)"
    assert page.locator(".lesson .plain a").first.evaluate(colour) == "rgb(0, 0, 0)"
