"""An answer that does not reach the site: kept, told, sent later, and counted once."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Locator, Page, Route, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Cohort, Person
from exercises.models import Attempt
from tests.browser.site import follow, sign_in, violations
from tests.own import published
from tests.photographs import noted

NOTE = "The reel ends at the ferry; the left recorder has the master, the right one has the copy."
KEPT = "Your answer is kept here. It’s sent as soon as the site can be reached."
SENT = "An answer that was kept is sent."
ANSWERS = "**/answers/**"
IN_STORAGE = "() => Object.keys(localStorage).filter(key => key.includes('unsent'))"


@pytest.fixture
def page(live_server: LiveServer, context: BrowserContext, mina: Person) -> Iterator[Page]:
    """Mina's, signed in."""
    page = context.new_page()
    sign_in(page, live_server.url, mina)
    yield page
    page.close()


def cut_off(context: BrowserContext) -> None:
    """Let no answer reach the site."""
    context.route(ANSWERS, lambda route: route.abort())


def connect(context: BrowserContext) -> None:
    context.unroute(ANSWERS)


def write(page: Page, site: str, words: str = NOTE) -> None:
    page.goto(f"{site}/drills/free-answer/")
    page.get_by_role("textbox").fill(words)
    page.get_by_role("button", name="Answer", exact=True).click()


def told(page: Page) -> Locator:
    return page.locator(".unsent .notice p")


def verdict(page: Page) -> Locator:
    return page.locator(".verdict")


def words_kept() -> list[str]:
    return [attempt.answer["text"] for attempt in Attempt.objects.all()]


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


def test_sign_in_that_has_ended_costs_no_answer(
    live_server: LiveServer, context: BrowserContext, page: Page, mina: Person
) -> None:
    page.goto(f"{live_server.url}/drills/free-answer/")
    page.get_by_role("textbox").fill(NOTE)
    context.clear_cookies(name="sessionid")
    follow(page.get_by_role("button", name="Answer", exact=True))
    sign_in(page, live_server.url, mina)

    expect(told(page)).to_have_text(SENT)
    assert words_kept() == [NOTE]


def in_another_tab(context: BrowserContext, site: str, person: Person) -> None:
    """Sign out and in again, as this person."""
    tab = context.new_page()
    tab.goto(site)
    follow(tab.get_by_role("button", name="Sign out"))
    sign_in(tab, site, person)
    tab.close()


def test_same_person_signed_in_anew_in_another_tab_loses_no_answer(
    live_server: LiveServer, context: BrowserContext, page: Page, mina: Person
) -> None:
    page.goto(f"{live_server.url}/drills/free-answer/")
    page.get_by_role("textbox").fill(NOTE)
    in_another_tab(context, live_server.url, mina)
    page.get_by_role("button", name="Answer", exact=True).click()

    expect(verdict(page)).to_be_visible()
    assert words_kept() == [NOTE]
    assert page.evaluate(IN_STORAGE) == []


def test_browser_that_lost_the_cookie_of_its_forms_loses_no_answer(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    page.goto(f"{live_server.url}/drills/free-answer/")
    page.get_by_role("textbox").fill(NOTE)
    context.clear_cookies(name="csrftoken")
    page.get_by_role("button", name="Answer", exact=True).click()

    expect(verdict(page)).to_be_visible()
    assert words_kept() == [NOTE]


def test_answer_waits_while_somebody_else_is_signed_in(
    live_server: LiveServer, context: BrowserContext, page: Page, mina: Person, tom: Person
) -> None:
    page.goto(f"{live_server.url}/drills/free-answer/")
    page.get_by_role("textbox").fill(NOTE)
    in_another_tab(context, live_server.url, tom)
    page.get_by_role("button", name="Answer", exact=True).click()
    expect(told(page)).to_contain_text("Somebody else has signed in here.")
    expect(page.get_by_role("textbox")).to_have_value(NOTE)
    assert violations(page) == []
    assert words_kept() == []

    tab = context.new_page()
    tab.goto(live_server.url)
    follow(tab.get_by_role("button", name="Sign out"))
    assert len(tab.evaluate(IN_STORAGE)) == 1
    sign_in(tab, live_server.url, mina)
    expect(told(tab)).to_have_text(SENT)
    assert [(each.person, each.answer["text"]) for each in Attempt.objects.all()] == [(mina, NOTE)]


@pytest.mark.parametrize("status", [400, 403, 404, 409, 413, 500])
def test_refused_answer_stays_in_its_form_with_a_sentence(
    live_server: LiveServer, context: BrowserContext, page: Page, status: int
) -> None:
    whole = {"HX-Retarget": "body", "HX-Reswap": "innerHTML"}
    refused: list[int] = []

    def refuse(route: Route) -> None:
        if route.request.method == "POST":
            refused.append(status)
            route.fulfill(status=status, body="<h1>No</h1>", headers=whole)
        else:
            route.continue_()

    context.route(ANSWERS, refuse)
    write(page, live_server.url)
    expect(told(page)).to_contain_text("did not take" if status != 409 else "was not recorded")
    expect(page.get_by_role("textbox")).to_have_value(NOTE)
    expect(page.get_by_role("textbox")).to_be_enabled()
    assert violations(page) == []

    page.reload()
    expect(page.get_by_role("textbox")).to_have_value(NOTE)
    expect(told(page)).to_have_count(1)
    assert len(refused) == (2 if status == 403 else 1)

    connect(context)
    page.get_by_role("button", name="Answer", exact=True).click()
    expect(verdict(page)).to_be_visible()
    assert words_kept() == [NOTE]
    assert page.evaluate(IN_STORAGE) == []


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


def test_what_is_wrong_with_it_is_told_and_not_sent_again(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    cut_off(context)
    write(page, live_server.url, "")
    expect(told(page)).to_have_text(KEPT)
    connect(context)

    expect(page.locator("[aria-invalid=true]")).to_be_visible()
    expect(page.get_by_role("textbox")).to_be_enabled()
    expect(told(page)).to_have_count(0)
    assert page.evaluate(IN_STORAGE) == []


def test_refusal_on_another_page_gives_the_words_back(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    cut_off(context)
    write(page, live_server.url)
    expect(told(page)).to_have_text(KEPT)
    page.goto(f"{live_server.url}/lessons/")
    refused: list[str] = []

    def refuse(route: Route) -> None:
        refused.append(route.request.url)
        route.fulfill(status=404, body="gone")

    context.route(ANSWERS, refuse)
    expect(told(page)).to_contain_text("The site did not take an answer that was kept (404).")
    expect(page.locator(".kept-words")).to_have_text(NOTE)
    assert violations(page) == []
    page.reload()
    expect(page.locator(".kept-words")).to_have_text(NOTE)
    assert len(refused) == 1
    page.get_by_role("button", name="Delete what is kept").click()
    assert page.evaluate(IN_STORAGE) == []


@pytest.mark.parametrize("status", [429, 502, 503, 504])
def test_site_that_is_busy_or_away_is_tried_again(
    live_server: LiveServer, context: BrowserContext, page: Page, status: int
) -> None:
    tries: list[int] = []

    def put_off(route: Route) -> None:
        tries.append(status)
        first = 503 if len(tries) == 1 else status
        route.fulfill(status=first, body="later") if len(tries) < 3 else route.continue_()

    context.route(ANSWERS, put_off)
    write(page, live_server.url)

    expect(verdict(page)).to_be_visible()
    assert (len(tries), words_kept()) == (3, [NOTE])


def test_what_answers_in_the_sites_stead_takes_nothing(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    context.route(ANSWERS, lambda route: route.fulfill(body="Welcome to the harbour’s network."))
    write(page, live_server.url)
    expect(told(page)).to_have_text(KEPT)

    connect(context)
    expect(verdict(page)).to_be_visible()
    assert words_kept() == [NOTE]


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
