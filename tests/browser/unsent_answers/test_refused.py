"""An answer that the site refuses, or something in its stead: told, and no word is lost."""

import pytest
from playwright.sync_api import BrowserContext, Page, Route, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Person
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
