"""The main job, in Chromium: a learner reads, answers and sees what the tape did; their
instructor sees the cohort's scores and the answer as the learner saw it.
"""

import re

from playwright.sync_api import Browser, BrowserContext, Page, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.models import Asked, Attempt
from exercises.practice.attempts import ask
from tests.answers import right_answer, wrong_answer
from tests.browser.site import enter_as, follow, quiet_page, sign_in, without_javascript

MODE, SPOT = KINDS["choose-the-mode"], KINDS["spot-the-bad-edit"]
MODES = list(MODE.make(5).asks[0].every())

# Software that somebody answers with can be quicker than a hand.
ANSWER_AT_ONCE = """() => new MutationObserver((_, observer) => {
  const form = document.querySelector(".practice form:not(.in-words)");
  if (!form) return;
  observer.disconnect();
  form.querySelector("input[type=radio]").checked = true;
  form.querySelector("button").click();
}).observe(document.body, {childList: true, subtree: true})"""


def choose(page: Page, answer: dict[str, str]) -> None:
    for name, value in answer.items():
        page.locator(f'input[name="{name}"][value="{value}"]').check()
    page.get_by_role("button", name="Answer", exact=True).click()


def test_learner_reads_and_answers(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    asked = ask(mina, MODE, seed=5)
    with quiet_page(context, live_server.url) as page:
        sign_in(page, live_server.url, mina)
        expect(page.get_by_role("heading", name="Today")).to_be_visible()
        follow(page.get_by_role("link", name="Read the lesson"))
        expect(page.locator(".tape-map").first).to_be_visible()

        follow(page.get_by_role("link", name="Drills", exact=True))
        follow(page.get_by_role("link", name=MODE.title))
        choose(page, wrong_answer(asked))

        expect(page.locator(".verdict")).to_be_focused()
        expect(page.locator(".verdict")).to_have_text("Not right")
        expect(page.locator(".tape-map:visible").first).to_be_visible()
        page.get_by_role("button", name="One more like this").click()
        expect(page.get_by_role("button", name="Answer", exact=True)).to_be_visible()

    assert Attempt.objects.get().asked == asked
    assert Asked.objects.open().count() == 1


def test_learner_answers_within_a_lesson(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    asked = ask(mina, MODE, seed=8)
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/lessons/assemble-and-insert/")
        drill = page.locator(".placed-drill").filter(has_text=MODE.title).first
        drill.get_by_role("button", name="Try one now").click()
        choose(page, right_answer(asked))

        expect(page.locator(".verdict")).to_have_text("Right")
        expect(page).to_have_url(re.compile("/lessons/assemble-and-insert/"))


def test_question_within_a_lesson_can_be_answered_as_soon_as_it_shows(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/lessons/assemble-and-insert/")
        page.evaluate(ANSWER_AT_ONCE)
        drill = page.locator(".placed-drill").filter(has_text=MODE.title).first
        drill.get_by_role("button", name="Try one now").click()

        expect(page.locator(".verdict")).to_be_focused()
        expect(page).to_have_url(re.compile("/lessons/assemble-and-insert/"))


def test_learner_answers_by_keyboard_alone(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    ask(mina, MODE, seed=5)
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/{MODE.slug}/")
        radio = page.get_by_role("radio").first
        for _ in range(30):
            page.keyboard.press("Tab")
            if radio.evaluate("element => element === document.activeElement"):
                break
        page.keyboard.press("Space")
        page.keyboard.press("ArrowDown")
        page.keyboard.press("Tab")
        page.keyboard.press("Enter")

        expect(page.locator(".verdict")).to_be_focused()

    assert Attempt.objects.get().answer == {"mode": MODES[1]}


def test_double_click_counts_once(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    asked = ask(mina, MODE, seed=5)
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/{MODE.slug}/")
        page.locator('input[name="mode"]').first.check()
        page.get_by_role("button", name="Answer", exact=True).dblclick()

        expect(page.locator(".verdict")).to_be_visible()

    assert Attempt.objects.get().asked == asked


def test_learner_without_javascript(
    live_server: LiveServer, browser: Browser, mina: Person
) -> None:
    asked = ask(mina, SPOT, seed=2)
    with (
        without_javascript(browser) as context,
        quiet_page(context, live_server.url) as page,
    ):
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/lessons/assemble-and-insert/")
        place = page.locator(".placed-drill").filter(has_text=SPOT.title).first
        follow(place.get_by_role("button", name="Try one now"))
        choose(page, right_answer(asked))

        expect(page.locator(".verdict")).to_have_text("Right")
        expect(page).to_have_url(re.compile("/record/"))
        page.get_by_role("button", name="One more like this").click()
        expect(page).to_have_url(re.compile(f"/drills/{SPOT.slug}/"))

    assert Attempt.objects.get().right


def test_instructor_finds_the_answer(
    live_server: LiveServer, context: BrowserContext, ines: Person, mina: Person, harbour: Cohort
) -> None:
    asked = ask(mina, MODE, seed=5)
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/{MODE.slug}/")
        choose(page, wrong_answer(asked))
        expect(page.locator(".verdict")).to_be_visible()
        told = page.locator(".plain").first.inner_text()
        follow(page.get_by_role("button", name="Sign out"))

        sign_in(page, live_server.url, ines)
        follow(page.get_by_role("link", name=harbour.name))
        # Scripts make a grid of the table: only then its cells are those of a grid.
        row = page.get_by_role("grid").get_by_role("row").filter(has_text=mina.name)
        begun = row.get_by_role("gridcell", name=re.compile("^begun"))
        expect(begun).to_have_count(1)
        follow(row.get_by_role("link", name=mina.name))
        follow(page.get_by_role("link", name=MODE.title))

        expect(page.locator(".verdict")).to_have_text("Not right")
        expect(page.locator(".plain").first).to_have_text(
            told.replace("You", mina.name, 1), use_inner_text=True
        )
