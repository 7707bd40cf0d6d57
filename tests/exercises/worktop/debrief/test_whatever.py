"""Whatever was done at a bench, its debrief is whole."""

import json
from collections.abc import Iterator
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from course.lessons.shelf import shelf
from exercises.drills.setting.settings import USUAL
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.mastery.skills import SKILLS
from exercises.tape import TapeMap
from exercises.worktop.actions import act, replay
from exercises.worktop.debrief import Debrief, debrief
from exercises.worktop.done import BenchRefused
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import MASTER
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import practicals
from exercises.worktop.worktop import Worktop
from tests.exercises.worktop.hands import Taken
from tests.exercises.worktop.test_actions import ACTIONS

SET_UPS = [lay_out(practical, USUAL) for practical in practicals().values()]
MODES = [
    {"mode": "assemble"},
    {"mode": "insert"},
    {"mode": "insert", "sound": False},
    {"mode": "insert", "picture": False},
]
FRAME = st.integers(0, 2500)


@st.composite
def edits(draw: st.DrawFn, set_up: SetUp) -> list[Taken]:
    """An edit from somewhere of one of its tapes to anywhere on the master."""
    tape = draw(st.sampled_from(set_up.tapes))
    source_in = draw(st.integers(0, tape.length - 2))
    frames = draw(st.integers(1, 400))
    return [
        ("take-out", {"machine": "player"}),
        ("load", {"machine": "player", "tape": tape.name}),
        ("mode", draw(st.sampled_from(MODES))),
        ("tracking", {"to": draw(st.integers(-20, 20))}),
        ("sound-level", {"mode": "automatic", "gain": draw(st.integers(-200, 200))}),
        ("mark", {"which": "source_in", "at": source_in}),
        ("mark", {"which": "source_out", "at": min(source_in + frames, tape.length)}),
        ("mark", {"which": "master_in", "at": draw(FRAME)}),
        ("record", {}),
    ]


@st.composite
def whatever(draw: st.DrawFn) -> tuple[SetUp, list[Taken]]:
    """A practical, and what can be done of whatever is tried at it."""
    set_up = draw(st.sampled_from(SET_UPS))
    tried: list[Taken] = [("load", {"machine": "recorder", "tape": MASTER})]
    for part in draw(st.lists(st.one_of(edits(set_up), st.lists(ACTIONS, max_size=4)))):
        tried += part
    return set_up, list(done_of(set_up, tried))


def done_of(set_up: SetUp, tried: list[Taken]) -> Iterator[Taken]:
    top = Worktop.at_first(set_up)
    for name, arguments in tried:
        try:
            top = act(top, name, arguments).top
        except BenchRefused:
            continue
        yield name, arguments


@given(whatever())
@settings(max_examples=150, deadline=None)
def test_whatever_was_done_has_a_debrief_that_can_be_kept(done: tuple[SetUp, list[Taken]]) -> None:
    found = debrief(*done)

    kept = json.loads(json.dumps(found.as_json()))
    assert Debrief.from_json(kept) == found
    assert found.right is (not found.mistakes)
    plays_badly = [each for each in parts_of(found) if each["sort"] != "difference"]
    assert bool(TapeMap.from_json(found.map).faults) is bool(plays_badly)
    assert 0 <= found.score <= 100
    assert all(teaches(each["prevented"]) for each in found.mistakes)
    assert all(teaches(each) for each in [*found.rubric, found.practise or found.rubric[0]])
    assert set(found.beliefs) <= set(MISCONCEPTIONS)


@given(whatever())
@settings(max_examples=50, deadline=None)
def test_everything_that_the_judge_finds_is_told_in_one_mistake(
    done: tuple[SetUp, list[Taken]],
) -> None:
    set_up, actions = done
    assert set_up.session.brief is not None
    judgement = replay(set_up, actions).session.judged(set_up.session.brief)

    parts = parts_of(debrief(set_up, actions))

    assert of_sort(parts, "difference") == sorted(
        (each.kind.value, each.start, each.end) for each in judgement.differences
    )
    assert of_sort(parts, "fault") == sorted(
        (each.kind.value, each.start, each.end) for each in judgement.faults
    )
    unclean = [frames(each.start, each.end) for each in judgement.states]
    told_so = [frames(*each[1:]) for each in of_sort(parts, "state")]
    assert set().union(*told_so) == set().union(*unclean)
    assert sum(map(len, told_so)) == sum(map(len, unclean))


def parts_of(found: Debrief) -> list[dict[str, Any]]:
    return [part for each in found.mistakes for part in each["parts"]]


def of_sort(parts: list[dict[str, Any]], sort: str) -> list[tuple[str, int, int]]:
    chosen = (part for part in parts if part["sort"] == sort)
    return sorted((part["kind"], part["start"], part["end"]) for part in chosen)


def frames(start: int, end: int) -> set[int]:
    return set(range(start, end))


def teaches(place: dict[str, Any]) -> bool:
    """Whether the lesson has the section, and the skill is one."""
    lesson = shelf().find(place["lesson"])
    assert lesson is not None, place
    return place["skill"] in SKILLS and place["section"] in [each.id for each in lesson.sections]
