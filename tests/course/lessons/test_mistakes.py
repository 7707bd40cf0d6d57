"""Every mistake that can be made in a lesson's file is told with its file and line."""

from pathlib import Path

import pytest
from django.core.checks.registry import registry

from course.lessons.blocks.register import BLOCKS
from course.lessons.checks import check_folder, check_lessons
from course.lessons.problems import Problem
from course.lessons.shelf import CONTENT
from exercises.drills.register import KINDS
from tests.course.lessons.sample import LESSON, SLUG, line_of, shelve, spoilt

NO_HEAD = "A lesson begins with the fenced block that describes it, ```lesson on line 1."

MISTAKES = [
    pytest.param(
        "```lesson\ntitle",
        "title",
        1,
        NO_HEAD,
        id="no head",
    ),
    pytest.param("```lesson\ntitle", "+++\ntitle", 1, NO_HEAD, id="another form of head"),
    pytest.param(
        "```\n\n## The",
        "\n\n## The",
        1,
        "The block ```lesson is not closed by ``` on a line of its own.",
        id="head not closed",
    ),
    pytest.param(
        'title = "A short lesson"',
        "title = A short lesson",
        2,
        "This is not TOML: Invalid value.",
        id="not TOML",
    ),
    pytest.param(
        'title = "A short lesson"\n',
        "",
        2,
        "title is missing or is not a text.",
        id="no title",
    ),
    pytest.param(
        'title = "A short lesson"',
        'title = " "',
        2,
        "title is missing or is not a text.",
        id="empty title",
    ),
    pytest.param(
        'slug = "a-short-lesson"',
        'slug = "A Lesson"',
        3,
        "slug is small letters, digits and single hyphens.",
        id="slug with capitals",
    ),
    pytest.param(
        'slug = "a-short-lesson"',
        'slug = "another-lesson"',
        3,
        "A lesson with this slug is in a file NN-another-lesson.md.",
        id="slug is not the file's",
    ),
    pytest.param(
        "minutes = 8",
        "minutes = true",
        4,
        "minutes is missing or is not a whole number from 1 to 60.",
        id="minutes not a number",
    ),
    pytest.param(
        'outcome = ["say one thing;"]',
        "outcome = []",
        5,
        "outcome is missing or is not a list of texts.",
        id="no outcome",
    ),
    pytest.param(
        'drills = ["choose-the-mode"]',
        'drills = ["guess-the-mode"]',
        6,
        "There is no drill “guess-the-mode”.",
        id="unknown drill in the head",
    ),
    pytest.param('"Four.", ', "", 7, "summary has 5 lines.", id="summary too short"),
    pytest.param(
        'sources = ["common practice"]',
        "sources = [1]",
        8,
        "sources is missing or is not a text.",
        id="source not a text",
    ),
    pytest.param(
        'sources = ["common practice"]',
        'sources = ["common practice"]\nauthor = "x"',
        9,
        "author is not known here; known are title, slug, minutes, outcome, drills, summary, "
        "sources, claims.",
        id="unknown key",
    ),
    pytest.param(
        'expect = "2 seconds"',
        'expects = "2 seconds"',
        10,
        "A claim has text, check, given, expect, and nothing else.",
        id="claim with a wrong key",
    ),
    pytest.param(
        'expect = "2 seconds"',
        "expect = 2.5",
        10,
        "The claim's expect is of the wrong kind.",
        id="claim with a wrong kind",
    ),
    pytest.param(
        'text = "2 seconds are wiped"',
        'text = "2 seconds are gone"',
        10,
        "The lesson does not say “2 seconds are gone”.",
        id="claim that is not in the text",
    ),
    pytest.param(
        'text = "2 seconds are wiped"',
        'text = "are wiped"',
        10,
        "“are wiped” does not say '2 seconds'.",
        id="claim without its figure",
    ),
    pytest.param(
        'figure = "erase_gap", rate = "25"',
        'figure = "lock", rate = "25"',
        10,
        "“2 seconds are wiped”: expected '2 seconds', the tape model says '5 seconds'.",
        id="claim that the model does not confirm",
    ),
    pytest.param(
        'figure = "erase_gap", rate = "25"',
        'figure = "erase_gap", rate = "24"',
        10,
        "The claim can't be checked: '24' is not a valid Rate.",
        id="claim that can't be checked",
    ),
    pytest.param(
        "## The first place {#first}",
        "# The first place {#first}",
        line_of("## The first"),
        "Headings are ## or ###; the title is in the head.",
        id="heading of the first order",
    ),
    pytest.param(
        "## The first place {#first}",
        "##",
        line_of("## The first"),
        "A heading has words, or a name: {#name}.",
        id="heading without words",
    ),
    pytest.param(
        "A worked one {#second}",
        "A worked one {#first}",
        line_of("````example"),
        "The name “first” is used twice; give one {#another}.",
        id="name used twice",
    ),
    pytest.param(
        "lesson:a-short-lesson#second",
        "https://other.example/",
        line_of("Here 2"),
        "Links go to lesson:slug#name or term:name, not to “https://other.example/”.",
        id="link off the site",
    ),
    pytest.param(
        "lesson:a-short-lesson#second",
        "lesson:a-lost-lesson",
        line_of("Here 2"),
        "There is no lesson “a-lost-lesson”.",
        id="link to an unknown lesson",
    ),
    pytest.param(
        "lesson:a-short-lesson#second",
        "lesson:a-short-lesson#third",
        line_of("Here 2"),
        "“a-short-lesson” has no place “third”.",
        id="link to an unknown place",
    ),
    pytest.param(
        "Inside the box.",
        "![a](b.png)",
        line_of("Inside"),
        "Pictures are drawn by a block, not linked.",
        id="picture",
    ),
    pytest.param(
        "```tape-map",
        "```tapemap",
        line_of("```tape-map"),
        f"There is no block “tapemap”; there are {', '.join(BLOCKS)}, drill, local-rules, "
        "example, goes-wrong, caution.",
        id="unknown block",
    ),
    pytest.param(
        "Inside the box.",
        "- Inside\n\n  ```drill\n  ```",
        line_of("Inside") + 2,
        "A fenced block stands at the left margin.",
        id="block in a list",
    ),
    pytest.param(
        "````example A worked one {#second}",
        "````example",
        line_of("````example"),
        "A block “example” has a title behind the word.",
        id="box without a title",
    ),
    pytest.param(
        'caption = "Look at the pulses."\n',
        "",
        line_of("```tape-map"),
        "The diagram can't be drawn: caption is missing.",
        id="diagram without a caption",
    ),
    pytest.param(
        'title = "A shot behind black"',
        'title = ""',
        line_of("```tape-map"),
        "The diagram can't be drawn: title is not what it should be.",
        id="diagram without a title",
    ),
    pytest.param(
        'caption = "Look at the pulses."',
        'caption = "Look at the pulses."\ncolour = "red"',
        line_of("```tape-map"),
        "The diagram can't be drawn: colour is not known here.",
        id="diagram with an unknown key",
    ),
    pytest.param(
        'caption = "Look at the pulses."',
        'caption = "Look at the pulses."\nuntil = 2',
        line_of("```tape-map"),
        "The diagram can't be drawn: until is not what it should be.",
        id="diagram after more edits than there are",
    ),
    pytest.param(
        'caption = "Look at the pulses."',
        'caption = "Look at the pulses."\nwindow = { start = 0, end = 1001 }',
        line_of("```tape-map"),
        "The diagram can't be drawn: A window from 0 to 1001 does not lie on a tape of 1000.",
        id="diagram past the tape",
    ),
    pytest.param(
        'caption = "Look at the pulses."',
        'caption = "Look at the pulses."\nshow = "B"',
        line_of("```tape-map"),
        "The diagram can't be drawn: show is not what it should be.",
        id="diagram of an unknown source tape",
    ),
    pytest.param(
        'mode = "assemble", source = "A"',
        'mode = "assemble", source = "B"',
        line_of("```tape-map"),
        "The session is refused at edits[0].source: is not one of the sources.",
        id="session refused",
    ),
    pytest.param(
        "master = { length = 1000,",
        "master = { length = ,",
        line_of("master ="),
        "This is not TOML: Invalid value.",
        id="diagram that is not TOML",
    ),
    pytest.param(
        '```drill\nslug = "choose-the-mode"',
        '```drill\nslug = "guess-the-mode"',
        line_of("```drill"),
        f"There is no drill “guess-the-mode”; there are {', '.join(KINDS)}.",
        id="unknown drill in the text",
    ),
    pytest.param(
        '```drill\nslug = "choose-the-mode"',
        '```drill\ndrill = "choose-the-mode"',
        line_of("```drill"),
        "A block “drill” has slug, may have lead, and nothing else.",
        id="drill with a wrong key",
    ),
]


@pytest.mark.parametrize(("old", "new", "line", "problem"), MISTAKES)
def test_lesson_with_a_mistake_is_told_with_its_line(
    tmp_path: Path, old: str, new: str, line: int, problem: str
) -> None:
    shelf = shelve(tmp_path, spoilt(old, new))

    assert shelf.problems == (Problem(str(tmp_path / f"01-{SLUG}.md"), line, problem),)
    assert shelf.lessons == ()


def test_lesson_that_is_not_text_is_told(tmp_path: Path) -> None:
    path = tmp_path / f"01-{SLUG}.md"
    path.write_bytes(b"\xff\xfe```lesson")

    (error,) = check_folder(tmp_path)

    assert str(error) == f"{path}:1: (lessons.E001) A lesson is UTF-8 text."


def test_empty_file_is_told(tmp_path: Path) -> None:
    (tmp_path / "01-empty.md").touch()

    (error,) = check_folder(tmp_path)

    assert error.msg == NO_HEAD


def test_slug_of_two_lessons_is_told(tmp_path: Path) -> None:
    (tmp_path / f"02-{SLUG}.md").write_text(LESSON, encoding="utf-8")

    shelf = shelve(tmp_path, LESSON)

    assert [str(problem) for problem in shelf.problems] == [
        f"{tmp_path / f'02-{SLUG}.md'}:3: Another lesson has the slug “{SLUG}”."
    ]
    assert [str(lesson) for lesson in shelf.lessons] == ["Lesson 1: A short lesson"]


def test_check_of_a_mistake_names_file_and_line(tmp_path: Path) -> None:
    shelve(tmp_path, spoilt("minutes = 8", "minutes = 0"))

    (error,) = check_folder(tmp_path)

    assert str(error) == (
        f"{tmp_path / f'01-{SLUG}.md'}:4: (lessons.E001) "
        "minutes is missing or is not a whole number from 1 to 60."
    )


def test_check_of_the_course_finds_nothing() -> None:
    assert check_folder(CONTENT) == []


def test_check_of_lessons_is_part_of_every_check() -> None:
    assert check_lessons in registry.get_checks()


def test_mistake_in_one_lesson_leaves_the_others_on_the_site(tmp_path: Path) -> None:
    second = LESSON.replace(SLUG, f"{SLUG}-2")

    shelf = shelve(tmp_path, spoilt("minutes = 8", "minutes = 0"), second)

    assert [str(lesson) for lesson in shelf.lessons] == ["Lesson 1: A short lesson"]
    assert [problem.line for problem in shelf.problems] == [4]
