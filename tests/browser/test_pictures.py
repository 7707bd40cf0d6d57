"""A picture is sent as an answer, with JavaScript and without; its instructor looks at it."""

from pathlib import Path

from playwright.sync_api import Browser, BrowserContext, Page, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Cohort, Person
from exercises.models import Upload
from tests.browser.site import enter_as, follow, quiet_page, violations, without_javascript
from tests.own import published
from tests.photographs import all_places_taken, file_of, leads, noted

DECODED = "image => image.decode().then(() => image.naturalWidth)"


def send(page: Page, file: Path) -> None:
    page.get_by_label("Your picture", exact=True).set_input_files(file)
    page.get_by_role("button", name="Answer").click()


def test_picture_is_sent_and_looked_at(
    live_server: LiveServer,
    context: BrowserContext,
    tmp_path: Path,
    ines: Person,
    mina: Person,
    harbour: Cohort,
) -> None:
    drill = published(ines, harbour, form="picture")
    (tmp_path / "leads.jpg").write_bytes(noted(6))
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/{drill.slug}/")
        send(page, tmp_path / "leads.jpg")
        expect(page.locator(".verdict")).to_have_text("Waits for your instructor")
        shown = page.get_by_role("img", name="The picture that Mina Tarrant sent")
        expect(shown).to_be_visible()
        assert shown.evaluate(DECODED) == 40
        assert violations(page) == []

    context.clear_cookies()
    with quiet_page(context, live_server.url) as page:
        enter_as(page.context, live_server.url, ines)
        page.goto(f"{live_server.url}/cohorts/reviews/")
        small = page.get_by_role("img", name="The picture that Mina Tarrant sent")
        expect(small).to_be_visible()
        assert small.evaluate(DECODED) == 40
        follow(page.get_by_role("link", name="The leads of our recorder"))
        shown = page.get_by_role("img", name="The picture that Mina Tarrant sent")
        expect(shown).to_be_visible()
        assert violations(page) == []


def test_picture_is_sent_without_javascript(
    live_server: LiveServer,
    browser: Browser,
    tmp_path: Path,
    ines: Person,
    mina: Person,
    harbour: Cohort,
) -> None:
    drill = published(ines, harbour, form="picture")
    (tmp_path / "leads.png").write_bytes(file_of(leads(), "PNG"))
    (tmp_path / "leads.jpg").write_bytes(b"%PDF-1.7")
    context = without_javascript(browser)
    page = context.new_page()
    enter_as(page.context, live_server.url, mina)
    page.goto(f"{live_server.url}/drills/{drill.slug}/")
    send(page, tmp_path / "leads.jpg")
    expect(page.locator(".errorlist")).to_have_text(
        "This is no JPEG, PNG or WebP picture. Send one of these."
    )
    send(page, tmp_path / "leads.png")
    expect(page.locator(".verdict")).to_have_text("Waits for your instructor")
    context.close()

    assert Upload.objects.get().attempt.person == mina


def test_chosen_picture_stays_while_the_site_is_busy(
    live_server: LiveServer,
    context: BrowserContext,
    tmp_path: Path,
    ines: Person,
    mina: Person,
    harbour: Cohort,
) -> None:
    """A second press of the button sends it: nobody has to look for the file again."""
    drill = published(ines, harbour, form="picture")
    (tmp_path / "leads.jpg").write_bytes(noted())
    with quiet_page(context, live_server.url, busy=True) as page:
        enter_as(page.context, live_server.url, mina)
        page.goto(f"{live_server.url}/drills/{drill.slug}/")
        with all_places_taken():
            send(page, tmp_path / "leads.jpg")
            expect(page.locator(".errorlist")).to_contain_text("Send it again in a minute.")
        assert violations(page) == []
        page.get_by_role("button", name="Answer").click()
        expect(page.locator(".verdict")).to_have_text("Waits for your instructor")

    assert Upload.objects.get().attempt.person == mina
