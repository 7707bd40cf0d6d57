"""What the course of an edit says of an edit is held against the tape model's own account of it."""

from typing import Any

import pytest

from course.lessons.blocks.edit_course import EditCourse
from exercises.tape import Assemble, Bench, Condition, Rate, Source, Take, Tape, play, record
from tests.course.lessons.blocks.reading import figure, refusal

EDIT = "source = 500\nmaster = 400\nlength = 200\npre_roll = 150\npost_roll = 50\n"


def course(toml: str = "") -> EditCourse:
    read = figure("edit-course", EDIT + toml)
    assert isinstance(read, EditCourse)
    return read


@pytest.mark.parametrize(
    ("source", "master"), [(500, 400), (125, 125), (75, 400), (400, 75), (0, 400), (10, 30)]
)
def test_unsettled_frames_are_those_of_the_tape_model(source: int, master: int) -> None:
    drawn = course(f"run_up = {{ source = {source}, master = {master} }}")
    bench = Bench.default(Rate.R25)
    takes = (Take(500 - source, 1000),)
    blank = Tape.blank(1000)
    tape = blank.with_pass(400 - master, 400, "black") if master else blank

    edited = record(tape, Assemble(Source("A", takes), in_=500, out=700, at=400), bench, 0)
    bad = (Condition.UNSETTLED, Condition.RELOCK)
    states = [each for each in play(edited, bench) if each.start >= 400 and each.state in bad]
    clean = sum(each.end - each.start for each in states if each.start < 600)

    assert drawn.unsettled == clean == max(0, 125 - min(source, master))


def test_machine_locks_so_long_after_it_plays() -> None:
    drawn = course("lock = 100\nrun_up = { source = 500, master = 60 }")

    assert (drawn.locked("source"), drawn.locked("master")) == (-50, 40)


def test_edit_is_told_in_order() -> None:
    assert course().sentences() == [
        "Parked: both machines stand 6 seconds before the edit in, "
        "the player at 00:00:14:00, the recorder at 00:00:10:00.",
        "Pre-roll, 6 seconds: both machines play, and nothing is recorded. Run-up: 6 seconds on "
        "the source tape, 6 seconds on the edit master. Both are locked 1 second before the "
        "edit in.",
        "The edit, 8 seconds: the recorder records. Edit in: the player at 00:00:20:00, the "
        "recorder at 00:00:16:00. Edit out, the first frame behind it: the player at "
        "00:00:28:00, the recorder at 00:00:24:00.",
        "Post-roll, 2 seconds: both machines play on, and nothing is recorded.",
        "Parked again: the player at 00:00:30:00, the recorder at 00:00:26:00.",
    ]


def test_short_run_up_is_told() -> None:
    _, pre_roll, edit, *_ = course("run_up = { source = 75, master = 100 }").sentences()

    assert pre_roll.endswith("At the edit in, the player and the recorder are not locked yet.")
    assert edit.endswith("Its first 2 seconds are unsettled.")


def test_drawing_is_in_proportion() -> None:
    drawing: Any = course().drawing
    widths = {
        stretch["name"]: float(stretch["width"].rstrip("%")) for stretch in drawing["stretches"]
    }

    # 150, 200 and 50 frames, in 82 % of the width.
    assert widths["pre-roll"] == pytest.approx(3 * widths["post-roll"], abs=0.03)
    assert widths["edit"] == pytest.approx(4 * widths["post-roll"], abs=0.03)
    assert drawing["edit_in"] == drawing["stretches"][2]["x"]
    assert [tick["name"] for tick in drawing["ticks"]] == [
        "−6", "−4", "−2", "0", "+2", "+4", "+6", "+8", "+10",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("toml", "line", "sentence"),
    [
        ("source = 500", 0, "pre_roll is a whole number from 25 to 500."),
        (EDIT.replace("= 400", "= 149"), 2, "master is a whole number from 150 to 270000."),
        (EDIT + "lock = 151", 6, "lock is a whole number from 1 to 150."),
        (EDIT + "[run_up]\nsource = 501", 7, "source in run_up is a whole number from 0 to 500."),
        (EDIT + "[run_up]\nplayer = 1", 7, "player is not known here; known are source, master."),
        (EDIT + 'rate = "24"', 6, "rate is one of 25, 29.97."),
        (EDIT.replace("50\n", "0.5\n", 1), 4, "pre_roll is a whole number from 25 to 500."),
        (EDIT.replace("= 200", "= 0"), 3, "length is a whole number from 1 to 3000."),
    ],
)
def test_mistake_is_told_with_its_line(toml: str, line: int, sentence: str) -> None:
    assert refusal("edit-course", toml) == (line, sentence)
