"""What tests of an answer that does not reach the site have in common."""

from playwright.sync_api import BrowserContext, Locator, Page

from exercises.models import Attempt

NOTE = "The reel ends at the ferry; the left recorder has the master, the right one has the copy."
KEPT = "Your answer is kept here. It’s sent as soon as the site can be reached."
SENT = "An answer that was kept is sent."
ANSWERS = "**/answers/**"
IN_STORAGE = "() => Object.keys(localStorage).filter(key => key.includes('unsent'))"


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
