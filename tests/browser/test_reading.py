"""Reading a lesson in a browser: what was in view is kept, and the way back leads there."""

from playwright.sync_api import Browser, BrowserContext, Page, Response, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Person
from course.lessons.models import Reading
from course.lessons.shelf import shelf
from tests.browser.site import (
    enter_as,
    follow,
    quiet_page,
    stop_clock,
    violations,
    without_javascript,
)

LESSON = shelf().lessons[1]
THIRD = LESSON.contents[2]


def tells_third(response: Response) -> bool:
    return THIRD.id in (response.request.post_data or "")


# The browser reports what is in view to all who asked at once, those first who asked first.
NOTICED = "() => new Promise(done => new IntersectionObserver(done).observe(document.body))"


def come_to(page: Page, place: str) -> None:
    """Scroll there, until the browser has noticed."""
    page.locator(f"#{place}").scroll_into_view_if_needed()
    page.evaluate(NOTICED)


def test_section_is_kept_once_it_was_in_view_for_a_while(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        stop_clock(page)
        page.goto(f"{live_server.url}/lessons/{LESSON.slug}/")
        come_to(page, THIRD.id)
        with page.expect_response(tells_third) as reached:
            page.clock.run_for(3100)

        assert reached.value.status == 204
        assert Reading.objects.get().section == THIRD.id
        page.goto(f"{live_server.url}/lessons/")
        follow(page.get_by_role("link", name=f"Go on at “{THIRD.title}”"))
        expect(page).to_have_url(f"{live_server.url}/lessons/{LESSON.slug}/#{THIRD.id}")


def test_what_is_only_scrolled_past_is_not_kept(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        stop_clock(page)
        page.goto(f"{live_server.url}/lessons/{LESSON.slug}/")
        come_to(page, "summary")
        page.clock.run_for(1000)
        come_to(page, THIRD.id)
        with page.expect_response(tells_third):
            page.clock.run_for(3100)

        assert not Reading.objects.get().done


def test_lesson_is_marked_as_read_by_keyboard_without_javascript(
    live_server: LiveServer, browser: Browser, mina: Person
) -> None:
    with quiet_page(without_javascript(browser), live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/lessons/{LESSON.slug}/")
        page.get_by_role("button", name="Mark this lesson as read").press("Enter")

        expect(page.get_by_text("You read this lesson on")).to_be_visible()
        assert Reading.objects.get().done


def test_link_of_a_word_leads_to_its_entry(
    live_server: LiveServer, context: BrowserContext
) -> None:
    with quiet_page(context, live_server.url) as page:
        page.goto(f"{live_server.url}/lessons/{LESSON.slug}/")
        with page.expect_navigation():
            page.locator("a.term", has_text="servo lock").press("Enter")

        expect(page).to_have_url(f"{live_server.url}/glossary/#servo-lock")
        expect(page.locator("#servo-lock dfn")).to_be_in_viewport()
        assert violations(page) == []
