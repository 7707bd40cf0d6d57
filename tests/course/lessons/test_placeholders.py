"""The figures of a bench in a lesson: the reader's own, or the usual ones."""

from dataclasses import replace
from pathlib import Path

import pytest
from django.template.loader import render_to_string

from course.lessons.blocks.signal_path import Link
from course.lessons.lesson import LocalRules
from course.lessons.markdown import Reader
from course.lessons.placeholders import WORDS, fill, fill_html, filled
from course.lessons.problems import Problem
from exercises.drills.setting.bench_figures import BenchFigures
from exercises.drills.setting.settings import Meter, Settings
from exercises.tape import Bench, Rate
from tests.course.lessons.sample import LESSON, SLUG, line_of, read_sample, shelve, spoilt

OWN = BenchFigures(
    settings=Settings(
        bench=replace(Bench.default(Rate.R29_97), lock=165, relock=1, erase_gap=0, drop_frame=True),
        pre_roll=210,
        source_run_up=360,
        meters=frozenset({Meter.VU, Meter.TRACKING}),
    ),
    name="Bench <2>",
    local_rules="No drinks.\n\n  Hands off the covers. ",
    who_to_ask="Orla",
)


@pytest.mark.parametrize(
    ("name", "usual", "own"),
    [
        ("name", "your bench", "Bench <2>"),
        ("lines", "625", "525"),
        ("frames", "25", "29.97"),
        ("time-code", "25-frame time code", "drop-frame time code"),
        ("pre-roll", "5 seconds", "7 seconds"),
        ("source-run-up", "10 seconds", "12 seconds"),
        ("lock", "5 seconds", "5 seconds 15 frames"),
        ("relock", "1 second", "1 frame"),
        ("erase-gap", "2 seconds", "0 frames"),
        (
            "meters",
            "a waveform monitor, a needle for the picture level, a VU meter and a tracking meter",
            "a VU meter and a tracking meter",
        ),
        ("who-to-ask", "your instructor", "Orla"),
    ],
)
def test_placeholder_stands_for_a_figure_in_words(name: str, usual: str, own: str) -> None:
    assert fill(f"So {{bench:{name}}}.") == f"So {usual}."
    assert fill(f"So {{bench:{name}}}.", OWN) == f"So {own}."


def test_every_placeholder_is_tested() -> None:
    assert len(WORDS) == 11


def test_bench_without_meters_says_so() -> None:
    bare = replace(
        OWN,
        settings=replace(
            OWN.settings, meters=frozenset(), bench=replace(OWN.settings.bench, drop_frame=False)
        ),
    )

    assert fill("{bench:meters}, {bench:time-code}", bare) == "no meters, non-drop-frame time code"


def test_what_an_instructor_typed_stays_text_within_a_lesson() -> None:
    assert fill_html("<p>{bench:name}</p>", OWN) == "<p>Bench &lt;2&gt;</p>"


def test_lesson_has_the_figures_in_every_text(tmp_path: Path) -> None:
    text = spoilt("Inside the box.", "Wind back {bench:pre-roll}.")
    text = text.replace("| cell | cell |", "| {bench:erase-gap} | cell |").replace(
        "say one thing;", "say {bench:name};"
    )
    lesson = read_sample(tmp_path, text)
    own = filled(lesson, OWN)

    assert lesson.has_figures
    assert "Wind back 5 seconds." in lesson.text()
    assert "Wind back 7 seconds." in own.text()
    assert own.front.outcome == ("say Bench <2>;",)
    assert [part.html for part in own.parts if hasattr(part, "html")][-1].count("0 frames") == 1


def test_lesson_without_placeholders_is_one_for_all(tmp_path: Path) -> None:
    shelf = shelve(tmp_path, LESSON)

    assert shelf.for_bench(shelf.lessons[0], OWN) is shelf.lessons[0]


def test_lesson_is_filled_once_for_a_bench(tmp_path: Path) -> None:
    shelf = shelve(tmp_path, spoilt("Inside the box.", "Wind back {bench:pre-roll}."))
    lesson = shelf.lessons[0]

    assert shelf.for_bench(lesson, OWN) is shelf.for_bench(lesson, replace(OWN))
    assert "Wind back 7 seconds." in shelf.for_bench(lesson, OWN).text()


def test_placeholder_that_stands_for_nothing_is_told(tmp_path: Path) -> None:
    text = spoilt("Inside the box.", "Wind back {bench:preroll}.")
    problem = f"There is no figure “{{bench:preroll}}”; there are {', '.join(WORDS)}."
    file = str(tmp_path / f"01-{SLUG}.md")

    assert shelve(tmp_path, text).problems == (Problem(file, line_of("Wind back", text), problem),)


def rules(bench: BenchFigures) -> str:
    (part,) = Reader().parts("```local-rules\n```", 1)
    assert isinstance(part, LocalRules)
    context = {"section": part.section, "bench": bench}
    return " ".join(render_to_string("lessons/local_rules.html", context).split())


def test_rules_of_the_workshop_stand_in_a_lesson() -> None:
    html = rules(OWN)

    assert "<ul> <li>No drinks.</li><li>Hands off the covers.</li> </ul>" in html
    assert "Bench &lt;2&gt;" in html
    assert "Who to ask: Orla." in html


def test_stranger_is_told_to_ask_for_the_rules() -> None:
    html = rules(BenchFigures.usual())

    assert "Your workshop has rules of its own." in html
    assert "Who to ask: your instructor." in html


def test_named_tuples_are_filled_as_what_they_are() -> None:
    link = Link("player", "recorder", "picture", "at {bench:name}")

    assert filled((link,), OWN) == (Link("player", "recorder", "picture", "at Bench <2>"),)
