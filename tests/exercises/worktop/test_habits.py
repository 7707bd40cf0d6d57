"""Each practical is spoiled by the habits that it is about; its debrief tells which."""

from typing import NamedTuple

import pytest

from exercises.drills.setting.settings import USUAL, Settings
from exercises.worktop.debrief import debrief
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import Practical
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.benches import AT_USUAL, EACH
from tests.exercises.worktop.careless import (
    CONTROLS,
    Habit,
    as_assemble,
    as_insert,
    by_the_sheet,
    editing,
    found,
    half_a_second_late,
    judged,
    leaving,
    setting_once,
    where_it_stopped,
    without_black,
)


class Spoiling(NamedTuple):
    """What the judge finds at least after hands with a habit, and the belief that it tells of."""

    practical: str
    habit: Habit
    found: set[str]
    belief: str | None = None


SPOILING = [
    Spoiling("line-up", leaving("picture-level", "sound-level"), {"weak-sound", "clipped-picture"}),
    Spoiling(
        "line-up",
        setting_once("sound-level"),
        {"distorted-sound", "sound-level-jump"},
        "one-level-for-all",
    ),
    Spoiling("line-up", leaving("recorder-tracking"), {"recorder-off-position"}),
    Spoiling("leader", editing(without_black), {"no-control"}, "insert-lays-pulses"),
    Spoiling(
        "three-shots",
        setting_once("tracking", "skew"),
        {"noise-band", "bent-verticals"},
        "set-once",
    ),
    Spoiling(
        "cutaway",
        editing(as_assemble),
        {"touched", "sound-lost", "pulses-lost"},
        "assemble-picks-tracks",
    ),
    Spoiling("cutaway", editing(as_insert), {"touched"}, "insert-takes-both"),
    Spoiling("another-sentence", editing(as_insert), {"touched"}, "insert-takes-both"),
    Spoiling("another-sentence", editing(half_a_second_late), {"clipped-word"}, "words-can-spare"),
    Spoiling("another-sentence", leaving("sound-level"), {"weak-sound"}),
    Spoiling(
        "another-take", by_the_sheet, {"unsettled", "wrong-shot", "wrong-sound"}, "no-source-run-up"
    ),
    Spoiling("drift", setting_once("tracking"), {"noise-band"}, "set-once"),
    Spoiling("mend", editing(as_insert), {"no-control"}, "insert-lays-pulses"),
    Spoiling("mend", leaving("sound-level"), {"sound-level-jump", "distorted-sound"}),
    Spoiling("two-minutes", editing(where_it_stopped), {"late", "no-control"}, "late-is-safer"),
    Spoiling("two-minutes", leaving("recorder-tracking"), {"recorder-off-position"}),
    Spoiling(
        "believe-the-tape", by_the_sheet, {"early", "wrong-shot", "unsettled"}, "no-source-run-up"
    ),
]


@AT_USUAL
@pytest.mark.parametrize("spoiling", SPOILING, ids=[each.practical for each in SPOILING])
def test_each_is_spoiled_by_the_habits_that_it_is_about(
    spoiling: Spoiling, settings: Settings
) -> None:
    set_up = lay_out(practicals()[spoiling.practical], settings)

    assert found(judged(set_up, spoiling.habit(set_up))) >= spoiling.found


TOLD = [each for each in SPOILING if each.belief]


@pytest.mark.parametrize("spoiling", TOLD, ids=[each.practical for each in TOLD])
def test_the_debrief_tells_the_belief(spoiling: Spoiling) -> None:
    set_up = lay_out(practicals()[spoiling.practical], USUAL)
    told = debrief(set_up, list(spoiling.habit(set_up)))

    assert not told.right
    assert spoiling.belief in told.beliefs


def test_every_practical_has_its_habits() -> None:
    assert {each.practical for each in SPOILING} == set(practicals())


@EACH
def test_no_bench_was_left_as_its_practical_needs_it(practical: Practical) -> None:
    set_up = lay_out(practical, USUAL)

    assert found(judged(set_up, leaving(*CONTROLS)(set_up)))
