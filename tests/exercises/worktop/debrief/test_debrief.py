"""What a debrief says of careful hands, and how it scores."""

from collections.abc import Iterator
from typing import Any

import pytest

from exercises.drills.setting.settings import USUAL
from exercises.worktop.debrief import debrief
from exercises.worktop.guide import guided
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import Practical
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.debrief.three_shots import THREE_SHOTS, hands, lost, told, without
from tests.exercises.worktop.hands import Taken, by_the_plan


@pytest.mark.parametrize("practical", practicals().values(), ids=lambda each: each.slug)
def test_careful_hands_get_full_marks(practical: Practical) -> None:
    set_up = lay_out(practical, USUAL)

    found = debrief(set_up, by_the_plan(set_up))

    assert (lost(found), found.mistakes, found.beliefs) == ([], [], [])
    assert (found.right, found.score, found.practise) == (True, 100, None)
    assert all(row["told"] == "The same edit." for row in found.rows)


@pytest.mark.parametrize("practical", practicals().values(), ids=lambda each: each.slug)
def test_whoever_follows_the_guide_gets_full_marks(practical: Practical) -> None:
    set_up = lay_out(practical, USUAL)

    found = debrief(set_up, [(step.name, step.arguments) for step, _ in guided(set_up)])

    assert (lost(found), found.score) == ([], 100)


def test_the_score_is_by_the_rule_that_it_states() -> None:
    assert told(without("look-back")).scoring == (
        "30 of 100 for the right programme, 30 for no faults, and 40 shared by the habits that "
        "came up."
    )
    assert told(without("look-back")).score == 60 + 40 * 6 // 7
    assert told([]).score == 0


def test_edits_that_the_plan_has_no_need_of_come_last() -> None:
    actions = without("hand-in")
    actions += [each for each in actions if each[0] in ("mark", "record")][-4:]

    rows = debrief(THREE_SHOTS, actions).rows

    assert [(bool(row["plan"]), row["number"]) for row in rows] == [
        (True, 1),
        (True, 2),
        (True, 4),
        (False, 3),
    ]


def test_an_edit_stands_beside_the_shot_that_it_is_of_wherever_it_was_laid() -> None:
    """The first shot left out, the second laid in its place."""

    def change(edit: int, name: str, arguments: dict[str, Any]) -> Iterator[Taken]:
        if edit == 2 and arguments.get("which") == "master_in":
            yield name, {**arguments, "at": 1100}
        elif edit != 1 or name not in ("mark", "rehearse", "record"):
            yield name, arguments

    actions = [each for each in hands(change) if each != ("look-back", {})]

    rows = told(actions).rows

    assert [row["number"] for row in rows] == [None, 1, 2]
    assert rows[1]["told"] == "Master in 4 seconds earlier."
