"""Every page: the accessibility rules, nothing that moves while it loads, nothing heavy."""

from collections.abc import Callable
from datetime import timedelta

import pytest
from django.urls import reverse
from django.utils import timezone
from playwright.sync_api import BrowserContext, Page
from pytest_django.live_server_helper import LiveServer

from course.cohorts.agreeing import ask as ask_for_link
from course.cohorts.models import Cohort, Person
from course.cohorts.roster.writing import send
from course.lessons.shelf import shelf
from exercises.assignments.verbs import Terms, set_assignment
from exercises.drills.register import KINDS
from exercises.models import Attempt, Sitting
from exercises.practice.attempts import ask, submit
from exercises.practice.sittings import next_question, start, stop
from exercises.reviews.verbs import Said, reply, review
from exercises.sign_offs.verbs import Decision, sign_off
from tests.answers import right_answer, wrong_answer
from tests.browser.site import enter_as, quiet_page, violations
from tests.own import picture_sent, published
from tests.people import CohortFactory, instructor, learner

WIDTHS = (390, 1280)
LESSONS = [lesson.slug for lesson in shelf().lessons]

SHIFT = """async () => {
  await document.fonts.ready;
  for (let frames = 2; frames; frames--) await new Promise(requestAnimationFrame);
  const observer = new PerformanceObserver(() => {});
  observer.observe({type: "layout-shift", buffered: true});
  // What the browser's own player does within itself has no node of ours.
  const ours = entry => entry.sources.some(source => source.node);
  return observer.takeRecords().filter(ours).reduce((sum, entry) => sum + entry.value, 0);
}"""

CONTRAST = ("color-contrast",)
ASKED: set[str] = set()
# What the contrast of each text that shows comes from: its colour, is it large to WCAG 2.2 (1.4.3:
# 18 point, or 14 point and bold), and what it stands on. Of something that lies under it without
# being around it this says nothing but where: by the classes of all that the text is in.
LOOKS = """() => {
  const known = new Map([[null, ""]]);
  const around = (each) => {
    if (!known.has(each)) {
      const {backgroundColor, backgroundImage, opacity} = getComputedStyle(each);
      const name = [each.localName, each.getAttribute("class")];
      const own = [...name, backgroundColor, backgroundImage, opacity].join();
      known.set(each, `${around(each.parentElement)} ${own}`);
    }
    return known.get(each);
  };
  const looks = new Set();
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const {data, parentElement} = texts.currentNode;
    if (!data.trim() || !parentElement.checkVisibility({visibilityProperty: true})) continue;
    const {color, fontSize, fontWeight, textShadow} = getComputedStyle(parentElement);
    const large = parseFloat(fontSize) >= (fontWeight < 700 ? 24 : 18.66);
    looks.add([color, large, textShadow, around(parentElement)].join());
  }
  return [...looks];
}"""

AT_FIRST = """requestAnimationFrame(() => {
  window.wholeAtFirst = document.querySelector("#whole") !== null;
})"""


def learner_pages(mina: Person, said: Attempt) -> list[str]:
    pages = [
        "/",
        "/drills/",
        "/record/",
        "/account/",
        "/account/delete/",
        "/join/",
        "/lessons/",
        "/glossary/",
    ]
    pages += [f"/lessons/{slug}/" for slug in LESSONS]
    pages.append("/lessons/your-first-bench-day/checklist/")
    pages += [reverse("new-sitting"), ended_sitting(mina).get_absolute_url()]
    return [*pages, said.get_absolute_url()]


def drill_pages(mina: Person, slugs: list[str]) -> list[str]:
    """Of each kind, a wrong answer, a right one, and an open question."""
    pages = []
    for kind in map(KINDS.__getitem__, slugs):
        for answer in (wrong_answer, right_answer):
            asked = ask(mina, kind)
            pages.append(submit(asked, answer(asked)).get_absolute_url())
        pages.append(reverse("drill", args=[kind.slug]))
    return pages


def ended_sitting(mina: Person) -> Sitting:
    """A sitting that was stopped after one answer."""
    sitting = start(mina, [], 5)
    if asked := next_question(sitting):
        submit(asked, wrong_answer(asked))
    stop(sitting)
    return sitting


def instructor_pages(harbour: Cohort, mina: Person, reviewed: Attempt) -> list[str]:
    asked = ask(mina, KINDS["choose-the-mode"])
    attempt = submit(asked, wrong_answer(asked))
    own = [harbour.pk, mina.pk]
    return [
        "/cohorts/",
        "/cohorts/new/",
        reverse("cohort", args=[harbour.pk]),
        reverse("bench-figures", args=[harbour.pk]),
        reverse("cohort-person", args=own),
        reverse("cohort-attempt", args=[*own, attempt.key]),
        reverse("cohort-attempt", args=[*own, reviewed.key]),
        reverse("reviews"),
        reverse("items", args=[harbour.pk]),
        reverse("items-of-kind", args=[harbour.pk, "choose-the-mode"]),
        reverse("results", args=[harbour.pk]),
        *assignment_pages(harbour, mina),
        *desk_pages(harbour, mina),
        *people_pages(harbour, mina),
        *sign_off_pages(harbour, mina, code_of(harbour, mina)),
    ]


def reviewed(harbour: Cohort, mina: Person) -> Attempt:
    """An answer of which much is said, while another one waits."""
    ines, written = harbour.instructors.get(), KINDS["free-answer"]
    for key, score in (("c" * 32, 40), ("d" * 32, None)):
        asked = ask(mina, written)
        attempt = submit(asked, right_answer(asked))
        what = "score" if score else "sent-back"
        review(ines, attempt, Said(what=what, text="Name the mode.", score=score, key=key))
    reply(mina, attempt, "It was an insert.")
    asked = ask(mina, written)
    submit(asked, right_answer(asked))
    return attempt


def people_pages(harbour: Cohort, mina: Person) -> list[str]:
    content = b"name,e-mail\nWyn Carrow,\nMina Tarrant,\nBo Lind,wrong\n"
    upload = send(harbour.instructors.get(), content, harbour)
    own = [harbour.pk, mina.pk]
    return [
        reverse("cohort-roster", args=[harbour.pk]),
        reverse("roster-upload", args=[upload.token]),
        reverse("joining-code", args=[harbour.pk]),
        reverse("move-person", args=own),
        reverse("remove-person", args=own),
        reverse("delete-person", args=own),
        reverse("instructors", args=[harbour.pk]),
        reverse("archive-cohort", args=[harbour.pk]),
        reverse("archived-cohorts"),
        *link_pages(harbour, mina),
    ]


def link_pages(harbour: Cohort, mina: Person) -> list[str]:
    """A link that the instructor makes alone, one for which others are asked, and their asking."""
    ines, orla = harbour.instructors.get(), instructor("Orla Finch")
    quay = CohortFactory.create(name="Quay group")
    quay.instructors.add(orla)
    pia, wyn = learner("Pia Roscarrock", harbour, quay), learner("Wyn Carrow", harbour, quay)
    ask_for_link(ines, wyn)
    asked = ask_for_link(orla, pia)
    shared = [reverse("reset-link", args=[harbour.pk, each.pk]) for each in (mina, pia, wyn)]
    return [*shared, reverse("link-request", args=[asked.pk]), "/cohorts/"]


def code_of(harbour: Cohort, mina: Person) -> str:
    """The code of a sign-off, made on the way."""
    decision = Decision(state="alone", bench="Bench 1", note="Headphones on.", key="b" * 32)
    return sign_off(harbour.instructors.get(), mina, harbour, decision).code


def sign_off_pages(harbour: Cohort, mina: Person, code: str) -> list[str]:
    return [
        reverse("sign-offs", args=[harbour.pk]),
        reverse("sign-off-person", args=[harbour.pk, mina.pk]),
        reverse("sign-off", args=[harbour.pk, code]),
        reverse("withdraw-sign-off", args=[harbour.pk, code]),
        reverse("bench-card", args=[code]),
        reverse("verify"),
        reverse("verify-card", args=[code]),
    ]


def desk_pages(harbour: Cohort, mina: Person) -> list[str]:
    drill = published(harbour.instructors.get(), harbour)
    edits = published(harbour.instructors.get(), harbour, form="bad-edit")
    pictured = published(harbour.instructors.get(), harbour, form="picture")
    attempt = picture_sent(mina, pictured).attempt
    return [
        reverse("try-own", args=[pictured.pk]),
        reverse("cohort-attempt", args=[harbour.pk, mina.pk, attempt.key]),
        reverse("reviews"),
        reverse("desk"),
        reverse("new-own", args=["mode"]),
        reverse("new-own", args=["bad-edit"]),
        reverse("new-own", args=["text"]),
        reverse("new-own", args=["picture"]),
        drill.get_absolute_url(),
        reverse("revise-own", args=[drill.pk]),
        reverse("try-own", args=[drill.pk]),
        reverse("revise-own", args=[edits.pk]),
        reverse("try-own", args=[edits.pk]),
    ]


def assignment_pages(harbour: Cohort, mina: Person) -> list[str]:
    opens = timezone.now() - timedelta(days=1)
    columns = {"what": "practical", "title": "Lay a leader", "task": "Lay black."}
    times = {"opens_at": opens, "due_at": opens + timedelta(days=7)}
    made = set_assignment(
        harbour.instructors.get(), harbour, Terms(columns=columns | times, people=[])
    )
    own = [harbour.pk, made.pk]
    return [
        reverse("assignments", args=[harbour.pk]),
        reverse("new-assignment", args=[harbour.pk]),
        reverse("assignment-board", args=own),
        reverse("change-assignment", args=own),
        reverse("withdraw-assignment", args=own),
        reverse("extend-assignment", args=[*own, mina.pk]),
    ]


def stranger_pages(harbour: Cohort) -> list[str]:
    pages = ["/", "/sign-in/", "/account/new/", "/join/", "/lessons/", f"/lessons/{LESSONS[0]}/"]
    return [*pages, reverse("join-link", args=[harbour.join_code])]


def faults_of(page: Page, url: str) -> list[str]:
    """What is wrong with a page at either width, in words.

    It is loaded at each, for what moves then; narrow first, so that it can be asked at the second
    width and then, as it stands, at the first.
    """
    narrow, wide = (shifts_of(page, url, width) for width in WIDTHS)
    found = narrow + wide
    for width in reversed(WIDTHS):
        page.set_viewport_size({"width": width, "height": 900})
        found += [f"{url}, {width} wide: {fault}" for fault in rules_broken(page)]
    return found


def shifts_of(page: Page, url: str, width: int) -> list[str]:
    page.set_viewport_size({"width": width, "height": 900})
    page.emulate_media(color_scheme="light")
    page.goto(url)
    shift = page.evaluate(SHIFT)
    return [f"{url}, {width} wide: layout shifts by {shift}"] if shift > 0 else []


def rules_broken(page: Page) -> list[str]:
    """By the page as it stands; in the dark, which changes colours and nothing else, by those."""
    page.emulate_media(color_scheme="light")
    found = violations(page, but=() if new_looks(page) else CONTRAST)
    page.emulate_media(color_scheme="dark")
    if new_looks(page):
        found += [f"dark: {fault}" for fault in violations(page, *CONTRAST)]
    return found


def new_looks(page: Page) -> bool:
    """Does a text look as none did that was asked for its contrast?"""
    looks = set(page.evaluate(LOOKS)) - ASKED
    ASKED.update(looks)
    return bool(looks)


def test_page_shows_once_it_is_whole(
    live_server: LiveServer, context: BrowserContext, page: Page
) -> None:
    """On a slow machine, parts that are painted before the rest has come would move with it."""
    context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": 16})
    page.add_init_script(AT_FIRST)
    page.goto(f"{live_server.url}/glossary/")

    assert page.evaluate("wholeAtFirst")


def test_what_moves_while_a_page_loads_is_found(page: Page) -> None:
    page.set_content("<p>What stands below moves.</p>" * 9)
    assert page.evaluate(SHIFT) == 0
    page.evaluate("document.body.prepend(new Image(300, 300))")

    assert page.evaluate(SHIFT) > 0


def pages_of(who: str, harbour: Cohort, mina: Person) -> list[str]:
    said = reviewed(harbour, mina)
    slugs = sorted(KINDS)
    asked: dict[str, Callable[[], list[str]]] = {
        "stranger": lambda: stranger_pages(harbour),
        "learner": lambda: learner_pages(mina, said),
        "learner at half the drills": lambda: drill_pages(mina, slugs[::2]),
        "learner at the others": lambda: drill_pages(mina, slugs[1::2]),
        "instructor": lambda: instructor_pages(harbour, mina, said),
    }
    return asked[who]()


@pytest.mark.parametrize(
    "who",
    [
        "learner",
        "learner at half the drills",
        "learner at the others",
        "instructor",
        "stranger",
    ],
)
def test_pages_break_no_rule(
    live_server: LiveServer,
    context: BrowserContext,
    who: str,
    harbour: Cohort,
    mina: Person,
    ines: Person,
) -> None:
    pages = pages_of(who, harbour, mina)
    if who != "stranger":
        enter_as(context, live_server.url, ines if who == "instructor" else mina)
    faults: list[str] = []
    with quiet_page(context, live_server.url) as page:
        for path in pages:
            faults += faults_of(page, live_server.url + path)

    assert faults == []
