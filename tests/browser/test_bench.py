"""The practice bench in a browser: a practical by keyboard alone, and its pages by the rules."""

import pytest
from django.urls import reverse
from playwright.sync_api import Browser, BrowserContext, Page, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Person
from exercises.bench.forms.controls import MODE_TITLES, SOUND_TITLES
from exercises.bench.verbs import begin, do
from exercises.drills.setting.phrases import code
from exercises.models import PracticalRun
from exercises.tape import SoundMode
from exercises.worktop.guide import GuidedStep, guided
from exercises.worktop.practical import Way
from exercises.worktop.shelf import practicals
from tests.browser.keyboard import Keys
from tests.browser.site import enter_as, follow, quiet_page, violations, without_javascript

WIDTHS = (1280, 820)
MARKS = {"source_in": "Source in", "source_out": "Source out", "master_in": "Master in"}


class Hands:
    """Hands at the page of a run, that reach everything by Tab."""

    def __init__(self, page: Page, run: PracticalRun) -> None:
        self.page, self.run, self.bench = page, run, run.worktop.set_up.bench

    def do(self, step: GuidedStep) -> None:
        """Type what the action needs, press its button, and wait until the bench has moved."""
        done = int(self.page.locator("#bench-seen").input_value())
        for field, typed in self.fields(step).items():
            self.fill(field, typed)
        if step.name == "hand-in":
            Keys(self.page).to("Hand in", "summary")
            self.page.keyboard.press("Enter")
        self.reach(self.button(step))
        self.page.keyboard.press("Enter")
        if step.name != "hand-in":
            expect(self.page.locator("#bench-seen")).to_have_value(str(done + 1))

    def fields(self, step: GuidedStep) -> dict[str, str]:
        """By the id of the field."""
        given, name = step.arguments, step.name
        machine = given.get("machine", "")
        match name:
            case "load":
                return {f"{machine}-tape": given["tape"]}
            case "wind":
                return {f"{machine}-to": code(given["to"], self.bench)}
            case "play":
                return {f"{machine}-seconds": str(given["frames"] // self.bench.rate.nominal)}
            case "tracking" | "skew" | "recorder-tracking":
                return {f"{name}-to": str(given["to"])}
            case "mark":
                return {f"{given['which']}-at": code(given["at"], self.bench)}
            case "sound-level":
                shown = SOUND_TITLES[SoundMode(given["mode"])]
                return {"sound-mode": shown, "sound-gain": f"{given['gain'] / 10:g}"}
            case "picture-level":
                return {"picture-by": "Automatic"}
            case "mode":
                return {"mode-made": MODE_TITLES[made_of(given)]}
        return {}

    def button(self, step: GuidedStep) -> str:
        given = step.arguments
        machine = given.get("machine", "")
        return {
            "load": f"{machine}-in",
            "take-out": f"{machine}-out",
            "wind": f"{machine}-wind",
            "play": f"{machine}-play",
            "mark": f"{given.get('which')}-mark",
            "unmark": f"{given.get('which')}-off",
            "mode": "mode-set",
            "sound-level": "sound-set",
            "picture-level": "picture-set",
            "rehearse": "edit-rehearse",
            "record": "edit-record",
            "look-back": "edit-look",
            "hand-in": "hand-in",
        }.get(step.name, f"{step.name}-turn")

    def fill(self, field: str, typed: str) -> None:
        self.reach(field)
        if self.page.locator(f"#{field}").evaluate("each => each.tagName") == "SELECT":
            self.page.keyboard.type(typed)
            expect(self.page.locator(f"#{field} option:checked")).to_have_text(typed)
        else:
            self.page.keyboard.press("ControlOrMeta+A")
            self.page.keyboard.type(typed)

    def reach(self, element: str) -> None:
        Keys(self.page).reach(self.page.locator(f"#{element}"), element)


def made_of(mode: dict[str, object]) -> str:
    if mode["mode"] == "assemble":
        return "assemble"
    sides = [side for side in ("picture", "sound") if mode.get(side)]
    return "insert-both" if len(sides) == 2 else f"insert-{sides[0]}"


def begun(page: Page, address: str, slug: str) -> PracticalRun:
    """Begun alone, from its page, by keyboard."""
    page.goto(f"{address}{reverse('practical', args=[slug])}")
    keys = Keys(page)
    keys.choose("Alone", first="Watch it: every step is told before it is done")
    keys.send("Begin", to=practicals()[slug].title)
    return PracticalRun.objects.get()


def test_practical_is_done_by_keyboard_alone(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    enter_as(context, live_server.url, mina)
    with quiet_page(context, live_server.url) as page:
        run = begun(page, live_server.url, "three-shots")
        hands = Hands(page, run)
        for step, _ in guided(run.worktop.set_up):
            hands.do(step)

        expect(page.locator(".verdict")).to_contain_text("as the brief asks, and plays")
        assert violations(page) == []

    run.refresh_from_db()
    assert (run.right, run.score) == (True, 100)


def test_practical_done_badly_is_told_what_was_wrong(
    live_server: LiveServer, context: BrowserContext, mina: Person
) -> None:
    """Without a look at the player, and insert where nothing was ever recorded."""
    enter_as(context, live_server.url, mina)
    left_out = {"tracking", "skew", "rehearse", "look-back"}
    with quiet_page(context, live_server.url) as page:
        run = begun(page, live_server.url, "three-shots")
        hands = Hands(page, run)
        insert = {"mode": "insert", "picture": True, "sound": True}
        hands.do(GuidedStep(name="mode", arguments=insert, what="", why="", how=""))
        for step, _ in guided(run.worktop.set_up):
            if step.name not in left_out:
                hands.do(step)

        expect(page.locator(".verdict")).to_contain_text("not as the brief asks")
        expect(page.locator(".mistakes")).to_contain_text("An insert lays no pulses")
        follow(page.get_by_role("link", name="The bench at that step").first)
        expect(page.get_by_role("heading", level=1)).to_contain_text("step by step")
        assert violations(page) == []


def test_bench_works_without_javascript(
    live_server: LiveServer, browser: Browser, mina: Person
) -> None:
    begin(mina, practicals()["three-shots"], Way.ALONE)
    with (
        without_javascript(browser) as context,
        quiet_page(context, live_server.url, refused=1) as page,
    ):
        enter_as(page.context, live_server.url, mina)
        page.goto(live_server.url + PracticalRun.objects.get().get_absolute_url())
        follow(page.locator("#edit-record"))
        expect(page.get_by_role("alert")).to_contain_text("There is no source tape in the player.")
        page.locator("#player-tape").select_option("Tape 3")
        follow(page.locator("#player-in"))

        expect(page.locator("#player-counter")).to_have_text("00:00:00:00")
        expect(page.locator(".told-last")).to_contain_text("Tape 3 is in the player")


@pytest.mark.parametrize("way", [Way.WATCH, Way.FINISH, Way.ALONE])
def test_pages_of_the_bench_break_no_rule(
    live_server: LiveServer, context: BrowserContext, mina: Person, way: Way
) -> None:
    run = begin(mina, practicals()["three-shots"], way)
    steps = [step for step, _ in guided(run.worktop.set_up)][run.done : -1]
    for step in steps:
        do(run, run.done, step.name, step.arguments)
    enter_as(context, live_server.url, mina)
    pages = [run.get_absolute_url(), reverse("bench-replay", args=[run.token, run.done])]
    if way is Way.ALONE:
        do(run, run.done, "hand-in", {})
        pages = ["/bench/", "/bench/sheet/", reverse("practical", args=["three-shots"]), *pages]
        pages.append(run.get_absolute_url())
    found = []
    with quiet_page(context, live_server.url) as page:
        for path in pages:
            for width in WIDTHS:
                page.set_viewport_size({"width": width, "height": 900})
                page.emulate_media(color_scheme="light")
                page.goto(live_server.url + path)
                faults = violations(page)
                if page.evaluate("document.documentElement.scrollWidth > innerWidth"):
                    faults.append("it is wider than the window")
                page.emulate_media(color_scheme="dark")
                faults += violations(page, "color-contrast")
                found += [f"{path}, {width} wide: {fault}" for fault in faults]

    assert found == []
