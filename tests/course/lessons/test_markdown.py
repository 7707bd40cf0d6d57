from pathlib import Path

from django.contrib.auth.models import AnonymousUser
from django.template.loader import render_to_string
from django.test import RequestFactory

from course.lessons.lesson import Box, Diagram, Lesson, LessonTable, PlacedDrill, Prose
from course.lessons.markdown import Reader
from tests.course.lessons.sample import LESSON, read_sample, spoilt


def page(lesson: Lesson) -> str:
    """The lesson's page as a stranger gets it."""
    request = RequestFactory().get(f"/lessons/{lesson.slug}/")
    request.user = AnonymousUser()
    return render_to_string("lessons/lesson.html", {"lesson": lesson}, request=request)


def test_parts_stand_in_the_order_of_the_text(tmp_path: Path) -> None:
    lesson = read_sample(tmp_path)

    assert [type(part) for part in lesson.all_parts()] == [
        Prose,
        Diagram,
        Box,
        Prose,
        PlacedDrill,
        LessonTable,
    ]


def test_heading_takes_its_name_and_loses_the_mark() -> None:
    (part,) = Reader().parts("## What *insert* does {#insert}", 1)

    assert isinstance(part, Prose)
    assert part.html == '<h2 id="insert">What <em>insert</em> does</h2>\n'


def test_heading_without_a_name_gets_one_from_its_words() -> None:
    (part,) = Reader().parts("### What’s next?", 1)

    assert isinstance(part, Prose)
    assert part.html == '<h3 id="whats-next">What’s next?</h3>\n'


def test_link_to_a_place_becomes_its_address() -> None:
    reader = Reader()
    (part,) = reader.parts("[so](lesson:what-an-edit-is#generation)", 7)

    assert isinstance(part, Prose)
    assert part.html == '<p><a href="/lessons/what-an-edit-is/#generation">so</a></p>\n'
    assert [(link.slug, link.section, link.line) for link in reader.links] == [
        ("what-an-edit-is", "generation", 7)
    ]


def test_plain_text_of_a_part_is_what_is_read_aloud() -> None:
    prose, table = Reader().parts("One *two*\nthree `00:00:01:00`.\n\n| A |\n| - |\n| b |", 1)

    assert prose.texts() == ["One two three 00:00:01:00."]
    assert table.texts() == ["A", "b"]


def test_markup_in_the_text_is_shown_and_not_obeyed(tmp_path: Path) -> None:
    attack = "<script>alert(1)</script> <b onclick=x>bold</b>\n\n<div hidden>\n"
    html = page(read_sample(tmp_path, spoilt("Inside the box.", attack)))

    assert "<script>alert" not in html
    assert "&lt;script&gt;alert(1)&lt;/script&gt;" in html
    assert "<b " not in html
    assert "<div hidden" not in html


def test_address_that_runs_a_script_is_no_link(tmp_path: Path) -> None:
    html = page(read_sample(tmp_path, spoilt("Inside the box.", "[x](javascript:alert(1))")))

    assert "[x](javascript:alert(1))" in html
    assert 'href="javascript' not in html


def test_markup_outside_the_text_is_shown_and_not_obeyed(tmp_path: Path) -> None:
    attack = "<img src=x onerror=alert(1)>"
    text = LESSON
    for passage in ("A short lesson", "say one thing;", "Four.", "A shot behind black", "pulses."):
        text = text.replace(passage, attack, 1)
    html = page(read_sample(tmp_path, text.replace("A worked one", attack)))

    assert "<img" not in html
    assert html.count("&lt;img src=x onerror=alert(1)&gt;") >= 6
