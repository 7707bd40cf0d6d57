"""What is told of the habit that each practical is about."""

from collections.abc import Iterator
from dataclasses import replace

import pytest

from exercises.drills.setting.settings import USUAL
from exercises.tape import Edit, TapeMap
from exercises.worktop.debrief import debrief
from exercises.worktop.laying_out import lay_out
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.careless import (
    Habit,
    as_assemble,
    as_insert,
    by_the_sheet,
    editing,
    half_a_second_late,
    leaving,
    setting_once,
    where_it_stopped,
    without_black,
)
from tests.exercises.worktop.debrief.three_shots import kinds, lost
from tests.exercises.worktop.hands import Taken, by_the_plan

Mistakes = list[tuple[str, list[int]]]
BOTH = ["programme", "faults"]


def by_automatic_gain(set_up: SetUp) -> Iterator[Taken]:
    for name, arguments in by_the_plan(set_up):
        automatic = {"mode": "automatic", "gain": 0}
        yield name, automatic if name == "sound-level" else arguments


HABITS: dict[str, tuple[str, Habit, Mistakes, list[str], list[str]]] = {
    "levels left as they stand": (
        "line-up",
        leaving("picture-level", "sound-level"),
        [("sound-level", [1, 2]), ("picture-level", [3])],
        ["faults", "levels"],
        [],
    ),
    "the recorder left as others had it": (
        "line-up",
        leaving("recorder-tracking"),
        [("recorder-tracking", [1, 2, 3])],
        ["faults", "recorder"],
        [],
    ),
    "leaves speech to automatic gain": (
        "another-sentence",
        by_automatic_gain,
        [("sound-level", [1])],
        ["faults"],
        ["agc-evens-out"],
    ),
    "inserts without black": (
        "leader",
        editing(without_black),
        [("no-pulses", [1]), ("no-pulses", [2]), ("not-laid", [])],
        BOTH,
        ["insert-lays-pulses"],
    ),
    "an assemble inside the film": (
        "cutaway",
        editing(as_assemble),
        [("recorded-over", [1]), ("wiped", [1])],
        [*BOTH, "at-risk"],
        ["assemble-picks-tracks", "assemble-ends-clean"],
    ),
    "an insert of both where one is wanted": (
        "cutaway",
        editing(as_insert),
        [("recorded-over", [1])],
        ["programme", "at-risk"],
        ["insert-takes-both"],
    ),
    "marks half a second late": (
        "another-sentence",
        editing(half_a_second_late),
        [("cut-short", [1]), ("words", [1])],
        BOTH,
        ["words-can-spare"],
    ),
    "takes the take of the sheet": (
        "another-take",
        by_the_sheet,
        [("source-run-up", [3]), ("wrong-shot", [3])],
        BOTH,
        ["no-source-run-up"],
    ),
    "sets tracking once": (
        "drift",
        setting_once("tracking"),
        [("tracking", [3, 4, 5])],
        ["faults", "tracking"],
        ["set-once"],
    ),
    "marks where the recorder stopped": (
        "two-minutes",
        editing(where_it_stopped),
        [("hole", [2]), ("misplaced", [3, 4, 5, 6, 7, 8, 9, 10])],
        BOTH,
        ["late-is-safer"],
    ),
}


@pytest.mark.parametrize(
    ("slug", "habit", "mistakes", "lines", "beliefs"), HABITS.values(), ids=HABITS
)
def test_the_habit_that_a_practical_is_about_is_told_as_what_it_is(
    slug: str, habit: Habit, mistakes: Mistakes, lines: list[str], beliefs: list[str]
) -> None:
    set_up = lay_out(practicals()[slug], USUAL)

    found = debrief(set_up, habit(set_up))

    assert (kinds(found), lost(found), found.beliefs) == (mistakes, lines, beliefs)


def test_a_wiped_stretch_is_one_mistake_on_three_tracks() -> None:
    set_up = lay_out(practicals()["cutaway"], USUAL)

    _, wiped = debrief(set_up, editing(as_assemble)(set_up)).mistakes

    assert {part["kind"] for part in wiped["parts"]} >= {
        "picture-lost",
        "sound-lost",
        "pulses-lost",
        "no-control",
        "relock",
    }
    assert wiped["cause"] == (
        "Edit 1, an assemble from 00:00:45:00 to 00:00:50:00, wiped 2 seconds of tape past its end."
    )


TAUGHT = [
    ("drift", setting_once("tracking"), "drift"),
    ("three-shots", setting_once("tracking"), "set-up-first"),
    ("cutaway", editing(as_insert), "which-mode"),
]


@pytest.mark.parametrize(("slug", "habit", "section"), TAUGHT, ids=[slug for slug, *_ in TAUGHT])
def test_what_would_have_prevented_it_goes_by_how_it_came_about(
    slug: str, habit: Habit, section: str
) -> None:
    set_up = lay_out(practicals()[slug], USUAL)

    (mistake,) = debrief(set_up, habit(set_up)).mistakes

    assert mistake["prevented"]["section"] == section


def test_run_up_in_a_take_that_touches_is_a_belief_of_its_own() -> None:
    practical = practicals()["three-shots"]
    tape, other = practical.tapes
    touching = replace(tape, takes=(tape.takes[0], replace(tape.takes[1], before=0)))
    set_up = lay_out(replace(practical, tapes=(touching, other)), USUAL)
    take = set_up.by_name["Tape 3"].takes[1]

    def right_away(_: SetUp, edit: Edit) -> Edit:
        here = take.start <= edit.in_ < take.end
        return replace(edit, in_=take.start + 25, out=take.start + 225) if here else edit

    found = debrief(set_up, editing(right_away)(set_up))

    assert "touching-takes-share-pulses" in found.beliefs


def test_what_was_wrong_before_is_nobodys_mistake() -> None:
    set_up = lay_out(practicals()["mend"], USUAL)

    found = debrief(set_up, []).mistakes

    assert {tuple(each["edits"]) for each in found} == {()}
    assert "It was so before you sat down." in [each["cause"] for each in found]


def test_the_map_shows_the_part_that_matters_and_numbers_the_learners_own_edits() -> None:
    set_up = lay_out(practicals()["mend"], USUAL)

    shown = TapeMap.from_json(debrief(set_up, leaving("sound-level")(set_up)).map)

    first, last = set_up.document["brief"]["picture"][0], set_up.document["brief"]["picture"][-1]
    run_up, gap, aside = set_up.bench.lock, set_up.bench.erase_gap, 50
    assert shown.start == max(0, first["at"] - run_up - aside)
    assert shown.end == last["at"] + last["out"] - last["in"] + gap + aside
    assert [mark.edit for mark in shown.faults or () if mark.state == "distorted-sound"] == [1, 2]
    told = [mark.sentence[-9:] for mark in shown.faults or () if mark.state == "distorted-sound"]
    assert told == [" (edit 2)", " (edit 3)"]
