"""What a debrief holds, whatever was done."""

import json
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from course.lessons.shelf import shelf
from exercises.drills.setting.settings import USUAL
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.mastery.skills import SKILLS
from exercises.tape import TapeMap
from exercises.worktop.actions import act
from exercises.worktop.debrief import Debrief, debrief
from exercises.worktop.done import BenchRefused
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import Practical
from exercises.worktop.shelf import practicals
from exercises.worktop.worktop import Worktop
from tests.exercises.worktop.debrief.careless import THREE_SHOTS, lost, told, without
from tests.exercises.worktop.hands import Taken, by_the_plan
from tests.exercises.worktop.test_actions import ACTIONS, READY


@pytest.mark.parametrize("practical", practicals().values(), ids=lambda each: each.slug)
def test_careful_hands_get_full_marks(practical: Practical) -> None:
    set_up = lay_out(practical, USUAL)

    found = debrief(set_up, by_the_plan(set_up))

    assert (lost(found), found.mistakes, found.beliefs) == ([], [], [])
    assert (found.right, found.score, found.practise) == (True, 100, None)
    assert all(row["told"] == "The same edit." for row in found.rows)


def done_of(actions: list[Taken]) -> list[Taken]:
    """Those that can be done, one after the other."""
    top, done = Worktop.at_first(THREE_SHOTS), []
    for name, arguments in actions:
        try:
            top = act(top, name, arguments).top
        except BenchRefused:
            continue
        done.append((name, arguments))
    return done


EDITS = st.builds(
    lambda mode, tape, source_in, frames, at: [
        ("take-out", {"machine": "player"}),
        ("load", {"machine": "player", "tape": tape}),
        ("mode", mode),
        ("mark", {"which": "source_in", "at": source_in}),
        ("mark", {"which": "source_out", "at": source_in + frames}),
        ("mark", {"which": "master_in", "at": at}),
        ("record", {}),
    ],
    st.sampled_from(
        [
            {"mode": "assemble"},
            {"mode": "insert"},
            {"mode": "insert", "sound": False},
            {"mode": "insert", "picture": False},
        ]
    ),
    st.sampled_from(["Tape 3", "Tape 5"]),
    st.integers(100, 1400),
    st.integers(1, 400),
    st.integers(850, 1700),
)
WHATEVER = st.lists(st.one_of(EDITS, st.lists(ACTIONS, max_size=4)), max_size=12)


@given(WHATEVER)
@settings(max_examples=150, deadline=None)
def test_whatever_was_done_has_a_debrief_that_can_be_kept(parts: list[list[Taken]]) -> None:
    actions = done_of([*READY, *(action for part in parts for action in part)])

    found = debrief(THREE_SHOTS, actions)

    kept = json.loads(json.dumps(found.as_json()))
    assert Debrief.from_json(kept) == found
    assert found.right is (not found.mistakes)
    assert TapeMap.from_json(found.map).faults is not None
    assert 0 <= found.score <= 100
    assert all(teaches(each["prevented"]) for each in found.mistakes)
    assert all(teaches(each) for each in [*found.rubric, found.practise or found.rubric[0]])
    assert set(found.beliefs) <= set(MISCONCEPTIONS)
    judged_parts = [part for each in found.mistakes for part in each["parts"]]
    assert all(part["starts"] and part["told"].endswith(".") for part in judged_parts)


def teaches(place: dict[str, Any]) -> bool:
    """Whether the lesson has the section, and the skill is one."""
    lesson = shelf().find(place["lesson"])
    assert lesson is not None, place
    return place["skill"] in SKILLS and place["section"] in [each.id for each in lesson.sections]


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
