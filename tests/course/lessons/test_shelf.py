from pathlib import Path

import pytest

from course.lessons.shelf import LessonPlace, lesson_place, read_shelf, shelf
from tests.course.lessons.sample import LESSON, SLUG, shelve


def three(folder: Path) -> None:
    """Files 02, 05 and 11: gaps in the course that is still being written."""
    for number in ("02", "05", "11"):
        text = LESSON.replace(SLUG, f"part-{number}")
        (folder / f"{number}-part-{number}.md").write_text(text, encoding="utf-8")


def test_lessons_are_numbered_by_order_whatever_their_files_say(tmp_path: Path) -> None:
    three(tmp_path)

    read = read_shelf(tmp_path)

    assert [(lesson.number, lesson.slug) for lesson in read.lessons] == [
        (1, "part-02"),
        (2, "part-05"),
        (3, "part-11"),
    ]


def test_neighbours_of_a_lesson(tmp_path: Path) -> None:
    three(tmp_path)

    read = read_shelf(tmp_path)
    first, second, third = read.lessons

    assert (read.before(first), read.behind(first)) == (None, second)
    assert (read.before(second), read.behind(second)) == (first, third)
    assert (read.before(third), read.behind(third)) == (second, None)


def test_link_to_a_later_lesson_is_found(tmp_path: Path) -> None:
    first = LESSON.replace("lesson:a-short-lesson#second", f"lesson:{SLUG}-2#second")

    assert shelve(tmp_path, first, LESSON.replace(SLUG, f"{SLUG}-2")).problems == ()


def test_sections_keep_the_names_that_they_were_given(tmp_path: Path) -> None:
    (lesson,) = shelve(tmp_path, LESSON).lessons

    assert [(each.id, each.title, each.level) for each in lesson.sections] == [
        ("first", "The first place", 2),
        ("second", "A worked one", 3),
    ]


def test_lessons_are_read_once() -> None:
    assert shelf() is shelf()


@pytest.mark.parametrize(
    ("slug", "section", "place"),
    [
        (
            "assemble-and-insert",
            "which-mode",
            LessonPlace(
                "/lessons/assemble-and-insert/#which-mode",
                "Lesson 7: Assemble and insert, “Which mode?”",
            ),
        ),
        (
            "what-is-on-the-tape",
            "",
            LessonPlace("/lessons/what-is-on-the-tape/", "Lesson 2: What is on the tape"),
        ),
        (
            "what-is-on-the-tape",
            "no-such-place",
            LessonPlace("/lessons/what-is-on-the-tape/", "Lesson 2: What is on the tape"),
        ),
        ("no-such-lesson", "which-mode", None),
    ],
)
def test_place_of_a_rule(slug: str, section: str, place: LessonPlace | None) -> None:
    assert lesson_place(slug, section) == place


def test_every_section_has_a_place() -> None:
    for lesson in shelf().lessons:
        for section in lesson.sections:
            place = lesson_place(lesson.slug, section.id)

            assert place == LessonPlace(
                f"/lessons/{lesson.slug}/#{section.id}", f"{lesson}, “{section.title}”"
            )
