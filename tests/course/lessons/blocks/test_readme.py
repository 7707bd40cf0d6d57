"""The README for authors: its examples can be read, and it has every block."""

import re
from pathlib import Path

import pytest

import course.lessons
from course.lessons.blocks.figure import Figure
from course.lessons.blocks.register import BLOCKS, read_block
from course.lessons.front import read_front, split
from course.lessons.lesson import Diagram
from course.lessons.shelf import shelf
from tests.course.lessons.blocks.gallery import GALLERY
from tests.course.lessons.sample import shelve, spoilt

README = (Path(course.lessons.__file__).parent / "README.md").read_text(encoding="utf-8")
HEAD, *EXAMPLES = re.findall(
    r"^````\n```([a-z-]+)\n(.*?)^```\n````$", README, re.DOTALL | re.MULTILINE
)
MAPS = {name: drawn for lesson in shelf().lessons for name, drawn in lesson.diagrams().items()}


def test_head_in_the_example_can_be_read() -> None:
    parted = split("```{}\n{}```".format(*HEAD))

    assert read_front(parted.toml, parted.toml_line).slug == "what-an-edit-is"


def test_every_block_but_the_map_has_an_example() -> None:
    assert {kind for kind, _ in EXAMPLES} == set(BLOCKS) - {"tape-map"}


@pytest.mark.parametrize(("kind", "toml"), EXAMPLES)
def test_example_can_be_read(kind: str, toml: str) -> None:
    block = read_block(kind, toml, 1, MAPS)

    assert not isinstance(block, Diagram)
    if isinstance(block, Figure):
        assert block.sentences()


def test_link_leads_to_a_block(tmp_path: Path) -> None:
    linked = GALLERY.replace("lesson:a-short-lesson#second", "lesson:a-short-lesson#levels-speech")

    assert linked != GALLERY
    assert shelve(tmp_path, linked).problems == ()


def test_link_to_a_block_that_is_not_there_is_told(tmp_path: Path) -> None:
    lost = spoilt("lesson:a-short-lesson#second", "lesson:a-short-lesson#levels-speech")

    (problem,) = shelve(tmp_path, lost).problems

    assert problem.problem == "“a-short-lesson” has no place “levels-speech”."
