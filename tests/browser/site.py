"""The site in a browser: signing in, and what no page may do."""

from collections.abc import Iterable, Iterator
from contextlib import contextmanager

from axe_playwright_python.base import AXE_SCRIPT
from django.conf import settings
from django.test import Client
from playwright.sync_api import Browser, BrowserContext, Locator, Page, expect

from course.cohorts.models import Person
from tests.people import PASSWORD

# Of style sheets, which it would fetch again, no rule of ours asks.
WHAT_IS_WRONG: dict[str, object] = {"resultTypes": ["violations"], "preload": False}
RUN_AXE = "options => axe.run(options).then(found => found.violations)"
REFUSED = (
    "Failed to load resource: the server responded with a status of 422 (Unprocessable Entity)"
)


def enter_as(context: BrowserContext, address: str, person: Person) -> None:
    """What signing in leaves in a browser, for tests of what comes after it."""
    client = Client()
    client.force_login(person)
    session = client.cookies[settings.SESSION_COOKIE_NAME]
    context.add_cookies([{"name": session.key, "value": session.value, "url": address}])


def sign_in(page: Page, address: str, person: Person) -> None:
    page.goto(f"{address}/sign-in/")
    page.get_by_label("Sign-in name").fill(person.sign_in_name)
    page.get_by_label("Password").fill(PASSWORD)
    follow(page.get_by_role("button", name="Sign in"))
    expect(page.get_by_role("button", name="Sign out")).to_be_visible()


def follow(leading: Locator) -> None:
    """A link, or the button of a form, to another page; back when that one is whole.

    A click alone is back before: what follows would be looked for in the page that goes, or in
    one whose scripts have not run.
    """
    with leading.page.expect_navigation():
        leading.click()


def stop_clock(page: Page) -> None:
    """Let time pass on the page’s clock by the test’s word alone (`page.clock.run_for`).

    A busy machine needs longer between two presses than somebody in front of it.
    """
    page.clock.install(time=0)
    page.clock.pause_at(1)


@contextmanager
def quiet_page(
    context: BrowserContext, address: str, *, refused: int = 0, busy: bool = False
) -> Iterator[Page]:
    """A page that fails the test when the console complains or a request leaves the site.

    Chromium itself tells the console of every form that is `refused`; of a `busy` site, htmx too.
    """
    page = context.new_page()
    complaints: list[str] = []
    page.on("console", lambda m: complaints.append(m.text) if m.type != "info" else None)
    page.on("pageerror", lambda error: complaints.append(str(error)))
    page.on(
        "request",
        lambda r: None if r.url.startswith(address) else complaints.append(f"left: {r.url}"),
    )
    yield page
    page.close()
    told = [complaint for complaint in complaints if not (busy and " 503 " in complaint)]
    assert told == [REFUSED] * refused


def without_javascript(browser: Browser) -> BrowserContext:
    return browser.new_context(java_script_enabled=False)


def violations(page: Page, *rules: str, but: Iterable[str] = ()) -> list[str]:
    """What the accessibility rules, or some of them, have against the page as it stands."""
    if not page.evaluate("'axe' in window"):
        page.evaluate(AXE_SCRIPT)
    some: dict[str, object] = {"runOnly": list(rules)} if rules else {}
    off = {"rules": {rule: {"enabled": False} for rule in but}}
    found = page.evaluate(RUN_AXE, WHAT_IS_WRONG | some | off)
    return [
        f"{rule['id']}: {node['html']} ({rule['help']})" for rule in found for node in rule["nodes"]
    ]
