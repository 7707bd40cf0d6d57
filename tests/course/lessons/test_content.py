"""The lessons themselves: complete, in the order of the course, and true."""

import re

import pytest

from course.lessons.blocks.figure import Figure
from course.lessons.claims import confirm
from course.lessons.lesson import Box, Claim, Diagram, Lesson, PlacedDrill
from course.lessons.shelf import CONTENT, shelf
from tests.course.lessons.words import words

SHELF = shelf()
COURSE = (
    "what-an-edit-is",
    "what-is-on-the-tape",
    "the-machines",
    "setting-up-the-player",
    "setting-up-the-recorder",
    "picture-and-sound-levels",
    "assemble-and-insert",
    "run-up",
    "making-an-edit",
    "knowing-a-bad-edit",
    "planning",
    "what-this-bench-cannot-do",
    "finishing",
    "your-first-bench-day",
)
LESSONS = [pytest.param(lesson, id=lesson.slug) for lesson in SHELF.lessons]
CLAIMS = [
    pytest.param(lesson, claim, id=f"{lesson.slug}: {claim.text}")
    for lesson in SHELF.lessons
    for claim in lesson.front.claims
]
every_lesson = pytest.mark.parametrize("lesson", LESSONS)

LENGTH = re.compile(r"\d+ seconds?|\d+\.\d dB")


def test_every_file_is_on_the_shelf() -> None:
    assert SHELF.problems == ()
    assert len(SHELF.lessons) == len(list(CONTENT.glob("*.md"))) >= 3


def test_lessons_are_those_of_the_course_in_its_order() -> None:
    assert [f"{each.slug}" for each in SHELF.lessons] == [
        slug for slug in COURSE if SHELF.find(slug)
    ]
    assert [path.name for path in sorted(CONTENT.glob("*.md"))] == [
        f"{number:02}-{slug}.md" for number, slug in enumerate(COURSE, start=1) if SHELF.find(slug)
    ]


@every_lesson
def test_lesson_has_all_that_belongs_to_one(lesson: Lesson) -> None:
    parts = list(lesson.all_parts())
    boxes = [part for part in parts if isinstance(part, Box)]
    wrong = [box for box in boxes if box.kind == "goes-wrong"]

    assert 8 <= lesson.front.minutes <= 15
    assert len(lesson.front.outcome) >= 3
    assert len(lesson.front.summary) == 5
    assert lesson.front.sources
    assert len(lesson.seen()) >= 2
    assert [box.kind for box in boxes].count("example") == 1
    assert wrong
    assert all(any(isinstance(part, Diagram | Figure) for part in box.parts) for box in wrong)
    assert 2 <= sum(isinstance(part, PlacedDrill) for part in parts) <= 4
    assert {part.slug for part in parts if isinstance(part, PlacedDrill)} <= set(
        lesson.front.drills
    )


@every_lesson
def test_lesson_is_read_in_the_time_it_says(lesson: Lesson) -> None:
    # 100 to 130 words a minute: a text that teaches, with maps to look at and questions.
    count = len(words(lesson.text()))

    assert count / 130 <= lesson.front.minutes <= count / 100
    assert 900 <= count <= 1600


@every_lesson
def test_lesson_says_where_its_facts_come_from(lesson: Lesson) -> None:
    assert any("common practice" in source for source in lesson.front.sources)
    assert all(len(words(source)) >= 3 for source in lesson.front.sources)


@pytest.mark.parametrize(("lesson", "claim"), CLAIMS)
def test_claim_is_confirmed_by_the_tape_model(lesson: Lesson, claim: Claim) -> None:
    assert claim.text in lesson.text()
    confirm(lesson, claim)


@every_lesson
def test_every_length_told_of_a_diagram_is_claimed(lesson: Lesson) -> None:
    boxes = [part for part in lesson.parts if isinstance(part, Box) and part.kind != "caution"]
    told = {
        length
        for box in boxes
        for part in box.parts
        for text in part.texts()
        for length in LENGTH.findall(text)
    }
    claimed = {length for claim in lesson.front.claims for length in LENGTH.findall(claim.text)}

    assert told - claimed == set()
