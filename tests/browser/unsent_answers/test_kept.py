"""An answer that does not reach the site: kept, told, sent later, and counted once."""

from pathlib import Path

from playwright.sync_api import BrowserContext, Page, Route, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Cohort, Person
from exercises.models import Attempt
from tests.browser.site import follow, sign_in, violations
from tests.browser.unsent_answers.pages import (
    ANSWERS,
    IN_STORAGE,
    KEPT,
    NOTE,
    SENT,
    connect,
    cut_off,
    told,
    verdict,
    words_kept,
    write,
)
from tests.own import published
from tests.photographs import noted


def test_answer_is_kept_and_sent_when_it_can_be(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    cut_off(context)
    write(page, live_server.url)

    expect(told(page)).to_have_text(KEPT)
    expect(page.get_by_role("textbox")).to_have_value(NOTE)
    expect(page.get_by_role("textbox")).to_be_disabled()
    expect(page.get_by_role("button", name="Try now")).to_be_focused()
    assert violations(page) == []
    assert words_kept() == []

    connect(context)
    expect(verdict(page)).to_be_focused()  # by itself
    assert words_kept() == [NOTE]
    assert page.evaluate(IN_STORAGE) == []


def test_answer_whose_acknowledgement_was_lost_counts_once(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    def lose_the_answer(route: Route) -> None:
        assert route.fetch().status == 200
        route.abort()

    context.route(ANSWERS, lose_the_answer)
    write(page, live_server.url)
    expect(told(page)).to_have_text(KEPT)
    assert words_kept() == [NOTE]

    connect(context)
    expect(verdict(page)).to_be_visible()
    assert words_kept() == [NOTE]
    expect(page.get_by_text("You answered this question before")).to_have_count(0)


def test_answer_is_kept_over_a_reload(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    cut_off(context)
    write(page, live_server.url)
    expect(told(page)).to_have_text(KEPT)
    page.reload()
    expect(told(page)).to_have_text(KEPT)
    expect(page.get_by_role("textbox")).to_have_value(NOTE)

    connect(context)
    expect(verdict(page)).to_be_visible()
    assert words_kept() == [NOTE]


def test_choices_are_filled_in_again(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    cut_off(context)
    page.goto(f"{live_server.url}/drills/choose-the-mode/")
    page.get_by_role("radio").nth(1).check()
    page.get_by_role("button", name="Answer", exact=True).click()
    expect(told(page)).to_have_text(KEPT)
    page.reload()

    expect(page.get_by_role("radio").nth(1)).to_be_checked()
    expect(page.get_by_role("radio", checked=True)).to_have_count(1)


def test_page_without_the_question_sends_it_and_leads_there(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    cut_off(context)
    write(page, live_server.url)
    expect(told(page)).to_have_text(KEPT)
    page.goto(f"{live_server.url}/lessons/")
    expect(told(page)).to_contain_text("An answer of yours is kept here.")
    assert violations(page) == []

    connect(context)
    expect(told(page)).to_have_text(SENT)
    assert words_kept() == [NOTE]
    follow(page.get_by_role("link", name="See what came of it"))
    expect(verdict(page)).to_be_visible()


def test_somebody_else_at_the_same_computer_neither_sees_nor_sends_it(
    live_server: LiveServer, context: BrowserContext, page: Page, mina: Person, tom: Person
) -> None:
    cut_off(context)
    write(page, live_server.url)
    expect(told(page)).to_have_text(KEPT)
    connect(context)
    asked: list[str] = []

    context.clear_cookies()  # as when her sign-in has ended
    toms = context.new_page()
    for each in (page, toms):
        each.on("request", lambda request: asked.append(request.url))
    sign_in(toms, live_server.url, tom)
    toms.goto(f"{live_server.url}/drills/free-answer/")
    expect(toms.get_by_role("textbox")).to_have_value("")
    expect(told(toms)).to_have_count(0)
    page.get_by_role("button", name="Try now").click()  # her page, which is still open
    page.wait_for_timeout(3000)  # longer than the first pause
    expect(told(page)).to_have_text(KEPT)
    assert [url for url in asked if "/answers/" in url] == []

    context.clear_cookies()
    sign_in(toms, live_server.url, mina)
    expect(told(toms)).to_have_text(SENT)
    assert [(each.person, each.answer["text"]) for each in Attempt.objects.all()] == [(mina, NOTE)]


def test_signing_out_deletes_it_after_a_warning(
    live_server: LiveServer, context: BrowserContext, page: Page, mina: Person
) -> None:
    cut_off(context)
    write(page, live_server.url)
    expect(told(page)).to_have_text(KEPT)
    page.get_by_role("button", name="Sign out").click()
    expect(told(page).first).to_contain_text("Signing out deletes it")
    follow(page.get_by_role("button", name="Sign out"))
    assert page.evaluate(IN_STORAGE) == []

    connect(context)
    sign_in(page, live_server.url, mina)
    page.goto(f"{live_server.url}/drills/free-answer/")
    expect(page.get_by_role("textbox")).to_have_value("")
    assert words_kept() == []


def test_answer_can_be_changed_while_it_waits(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    cut_off(context)
    write(page, live_server.url)
    page.get_by_role("button", name="Change it").click()
    expect(told(page)).to_have_count(0)
    expect(page.get_by_role("textbox")).to_be_focused()
    connect(context)
    page.get_by_role("textbox").fill(f"{NOTE} It goes on.")
    page.get_by_role("button", name="Answer", exact=True).click()

    expect(verdict(page)).to_be_visible()
    assert words_kept() == [f"{NOTE} It goes on."]


def test_picture_waits_on_its_page(
    live_server: LiveServer,
    context: BrowserContext,
    page: Page,
    tmp_path: Path,
    ines: Person,
    harbour: Cohort,
) -> None:
    drill = published(ines, harbour, form="picture")
    (tmp_path / "leads.jpg").write_bytes(noted(6))
    cut_off(context)
    page.goto(f"{live_server.url}/drills/{drill.slug}/")
    page.get_by_label("Your picture", exact=True).set_input_files(tmp_path / "leads.jpg")
    page.get_by_role("button", name="Answer", exact=True).click()
    expect(told(page)).to_contain_text("Leave it open: it’s sent as soon as")

    connect(context)
    expect(verdict(page)).to_have_text("Waits for your instructor")
    assert Attempt.objects.count() == 1


def test_browser_that_keeps_nothing_keeps_it_on_the_page(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    page.add_init_script("Storage.prototype.setItem = () => { throw new Error('full') }")
    cut_off(context)
    write(page, live_server.url)
    expect(told(page)).to_contain_text("Leave it open: it’s sent as soon as")

    connect(context)
    expect(verdict(page)).to_be_visible()
    assert words_kept() == [NOTE]
