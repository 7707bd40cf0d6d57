"""Checklists: in a lesson, and alone on one sheet of paper."""

import re
from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse

from course.cohorts.benches import Bench, usual_bench
from course.cohorts.models import Cohort, Person
from course.lessons.blocks.checklist import Checklist, read_checklist
from course.lessons.problems import LessonProblem
from course.lessons.shelf import shelf

ClientOf = Callable[[Person], Client]

BLOCK = """\
name = "day"
title = "The day"

[[groups]]
title = "Before"
lines = ["One.", "Two."]

[[groups]]
title = "After"
lines = ["Three: {bench:pre-roll}."]
"""
BENCH_DAY = "your-first-bench-day"


def test_lines_are_counted_through_the_groups() -> None:
    checklist = read_checklist(BLOCK, 1)

    assert [(start, group.lines) for start, group in checklist.numbered] == [
        (1, ("One.", "Two.")),
        (3, ("Three: {bench:pre-roll}.",)),
    ]
    assert checklist.texts() == [
        "The day",
        "",
        "Before",
        "One.",
        "Two.",
        "After",
        "Three: {bench:pre-roll}.",
    ]


@pytest.mark.parametrize(
    ("old", "new", "line", "problem"),
    [
        (
            'title = "The day"\n',
            "",
            5,
            "A checklist has name, title, groups, may have lead, and nothing else.",
        ),
        (
            'title = "The day"',
            'title = "The day"\ncolour = 1',
            5,
            "A checklist has name, title, groups, may have lead, and nothing else.",
        ),
        (
            'lines = ["One.", "Two."]',
            "lines = []",
            5,
            "A checklist has [[groups]], each with a title and lines.",
        ),
        (
            'title = "Before"\n',
            "",
            5,
            "A checklist has [[groups]], each with a title and lines.",
        ),
        ('"One."', "1", 5, "1 in the checklist is not a text."),
        ('title = "The day"', "title = The day", 7, "This is not TOML: Invalid value."),
    ],
)
def test_mistake_in_a_checklist_is_told_with_its_line(
    old: str, new: str, line: int, problem: str
) -> None:
    with pytest.raises(LessonProblem) as told:
        read_checklist(BLOCK.replace(old, new, 1), 5)

    assert (told.value.line, told.value.problem) == (line, problem)


def test_last_lesson_has_checklists() -> None:
    lesson = shelf().find(BENCH_DAY)

    assert lesson is not None
    assert all(isinstance(each, Checklist) for each in lesson.checklists())
    assert len(lesson.checklists()) >= 1


def test_lesson_leads_to_its_checklist_alone(client: Client, db: None) -> None:
    html = client.get(reverse("lesson", args=[BENCH_DAY])).content.decode()

    assert f'href="/lessons/{BENCH_DAY}/checklist/"' in html


def test_sheet_has_the_figures_and_rules_of_the_bench(
    mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    bench: Bench = usual_bench()
    bench.name, bench.pre_roll, bench.local_rules = "Bench <2>", 7, "No drinks.\nHands off."
    bench.save()
    harbour.bench = bench
    harbour.save()
    html = client_of(mina).get(reverse("lesson-checklist", args=[BENCH_DAY])).content.decode()
    plain = " ".join(re.sub("<[^>]+>", " ", html).split())

    assert "Bench &lt;2&gt;: pre-roll 7 seconds, erase gap 2 seconds, 625 lines" in plain
    assert "<li>No drinks.</li><li>Hands off.</li>" in html
    assert "{bench:" not in html


def test_lesson_without_a_checklist_has_no_sheet(client: Client, db: None) -> None:
    page = client.get(reverse("lesson-checklist", args=["what-an-edit-is"]))

    assert page.status_code == 404
