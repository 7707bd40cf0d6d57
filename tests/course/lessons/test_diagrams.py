from typing import Any

import pytest

from course.lessons.diagrams import read_diagram
from course.lessons.lesson import Diagram
from course.lessons.problems import LessonProblem
from course.lessons.showing import as_tape
from exercises.tape import Source, Take, TapeMap

SESSION = """
name = "two"
title = "Two shots"
caption = "Look."
rate = "25"
master = { length = 1000, recorded = [{ start = 0, end = 250, what = "black" }] }
sources.A.takes = [{ start = 100, end = 750, generation = 2 }]
edits = [
  { mode = "assemble", source = "A", in = 300, out = 400, at = 250 },
  { mode = "assemble", source = "A", in = 500, out = 550, at = 350 },
]
"""


def drawn(keys: str = "") -> Diagram:
    return read_diagram(keys + SESSION, 1)


def shown(diagram: Diagram, panel: int = 0) -> TapeMap:
    return TapeMap.from_json(diagram.panels[panel].spec)


def sources(diagram: Diagram, panel: int = 0) -> list[Any]:
    """The picture lane of one map: source, start, end of each segment."""
    picture = shown(diagram, panel).lanes[0]
    return [(run.source, run.start, run.end) for run in picture.segments]


def test_diagram_shows_the_tape_after_all_edits() -> None:
    assert sources(drawn()) == [("black", 0, 250), ("A", 250, 350), ("A", 350, 400)]


def test_diagram_until_an_edit_leaves_out_the_later_ones() -> None:
    assert sources(drawn("until = 1")) == [("black", 0, 250), ("A", 250, 350)]


def test_pair_shows_the_tape_before_and_after() -> None:
    diagram = drawn('pair = [0, 2]\nlines = ["Then", "Now"]')

    assert [panel.line for panel in diagram.panels] == ["Then", "Now"]
    assert sources(diagram, 0) == [("black", 0, 250)]
    assert sources(diagram, 1) == [("black", 0, 250), ("A", 250, 350), ("A", 350, 400)]


def test_diagram_of_a_source_tape_shows_its_takes_where_they_are() -> None:
    diagram = drawn('show = "A"\nwindow = { start = 0, end = 800 }')

    assert sources(diagram) == [("A", 100, 750)]
    assert shown(diagram).lanes[0].segments[0].generation == 2


def test_source_tape_plays_from_its_own_frames() -> None:
    tape = as_tape(Source("A", (Take(100, 200), Take(200, 300))))

    assert [(run.start, run.end) for run in tape.control.runs] == [(100, 200), (200, 300)]
    assert [(run.start, run.value.frame) for run in tape.picture.runs] == [(100, 100)]
    assert tape.length == 300


def test_names_and_marks_reach_the_map() -> None:
    diagram = drawn('names = { A = "Tape 3" }\nmarks = { "edit in" = 250 }')
    drawing = shown(diagram)

    assert [mark.name for mark in drawing.marks] == ["edit in"]
    assert [run.label for run in drawing.lanes[0].segments] == ["black", "Tape 3", "Tape 3"]


def test_map_can_be_told_in_words() -> None:
    sentences = shown(drawn()).described()

    assert sentences[0] == "The tape from 00:00:00:00 to 00:00:40:00."


@pytest.mark.parametrize(
    "keys",
    [
        "pair = [0]",
        "pair = [0, 3]",
        "pair = [0, true]",
        'pair = [0, 1]\nlines = ["one"]',
        "until = -1",
        "until = true",
        "show = []",
        "window = { start = 0 }",
        'window = { start = 0, end = "1" }',
        "window = { start = 5, end = 5 }",
        "marks = { in = 1.5 }",
        "names = { A = 3 }",
        "bench = { lock = -1 }",
        "bench = { speed = 1 }",
    ],
)
def test_key_of_the_wrong_kind_is_refused(keys: str) -> None:
    with pytest.raises(LessonProblem) as refused:
        drawn(keys)

    assert refused.value.line == 1
