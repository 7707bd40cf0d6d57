"""What is told of the habit that each practical is about."""

from collections.abc import Iterator

import pytest

from exercises.drills.setting.settings import USUAL
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
        [("not-laid", []), ("no-pulses", [1]), ("no-pulses", [2]), ("not-laid", [])],
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
