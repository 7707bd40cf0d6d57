import re
from string import Formatter

import pytest

from exercises.drills.beliefs.telling_apart import subsets
from exercises.drills.judging.reply import grade
from exercises.drills.kind import Kind
from exercises.drills.kinds.care_and_safety import KIND as CARE
from exercises.drills.kinds.care_and_safety.case import LICENSED
from exercises.drills.kinds.care_and_safety.cases import CASES
from exercises.drills.kinds.care_and_safety.limits import KEEPING, OPERATING, STORING, Air
from exercises.drills.kinds.put_in_order import KIND as PUT_IN_ORDER
from exercises.mastery.misconceptions import MISCONCEPTIONS
from tests.believers import believed, touched
from tests.exercises.drills.made import many

NAMES = {case.name.replace(" ", "-"): case for case in CASES}
ENOUGH = 40


def test_there_are_enough_situations_and_each_occurs() -> None:
    found = {question.situation for question in many(CARE, 1_000)}

    assert found == set(NAMES)
    assert len(CASES) == len(found) >= ENOUGH


def test_story_names_a_tape_and_a_shot_of_the_film() -> None:
    for case in CASES:
        used = {name for _, name, _, _ in Formatter().parse(case.story)}

        assert {"tape", "shot"} <= used, case.name


def test_beliefs_are_told_apart() -> None:
    for case in CASES:
        answers = {case.believed(held) for held in subsets(case.beliefs)}

        assert len(answers) == 2 ** len(case.beliefs), case.name
        assert set(case.held) == answers - {case.right}, case.name


def test_nobody_is_told_to_open_or_to_carry_a_machine() -> None:
    opens = re.compile(
        r"\b(cover off|open (it|the (machine|recorder|player|monitor))|lift|carry)\b", re.I
    )

    assert [case.name for case in CASES if opens.search(case.right)] == []


@pytest.mark.parametrize("name", ["a-cover-is-off", "who-cleans-the-heads", "a-worn-lead"])
def test_what_lies_behind_a_cover_is_for_licensed_people(name: str) -> None:
    assert NAMES[name].caution == LICENSED


def test_feedback_names_source_and_caution_and_why_not() -> None:
    for seed, question in enumerate(many(CARE, 60)):
        for answer in question.asks[0].every():
            verdict = grade(question, {"reply": answer})
            told = verdict.feedback

            assert all((told["source"], told["caution"], told["why"])), (seed, answer)
            assert bool(told["why_not"]) is not verdict.right, (seed, answer)


@pytest.mark.parametrize(
    ("air", "warmth", "damp", "fault"),
    [
        (OPERATING, 17, 30, ""),
        (OPERATING, 25, 70, ""),
        (OPERATING, 26, 50, "warm"),
        (OPERATING, 16, 50, "cold"),
        (OPERATING, 20, 71, "damp"),
        (OPERATING, 20, 29, "dry"),
        (STORING, 23, 55, ""),
        (STORING, 23, 56, "damp"),
        (KEEPING, 17, 30, ""),
        (KEEPING, 20, 30, "warm"),
    ],
)
def test_limits_of_air_belong_to_it(air: Air, warmth: int, damp: int, fault: str) -> None:
    assert air.fault(warmth, damp) == fault


@pytest.mark.parametrize(
    ("situation", "beliefs"),
    [
        ("it-does-nothing", ("recorders-alike",)),
        ("the-end-of-the-day", ("counter-is-time-code",)),
        ("a-van-overnight", ("any-tape-plays",)),
        ("a-cold-edit-master", ("any-tape-plays", "recorders-alike")),
    ],
)
def test_belief_is_revealed_beside_the_danger(situation: str, beliefs: tuple[str, ...]) -> None:
    question = next(each for each in many(CARE, 1_000) if each.situation == situation)
    verdict = grade(question, believed(question, beliefs)).as_told()

    assert verdict.misconceptions == beliefs
    assert verdict.feedback["beliefs"] == [MISCONCEPTIONS[each].learner for each in beliefs]
    assert verdict.feedback["why_not"]


def test_a_tape_that_fits_is_offered_to_whoever_would_play_it() -> None:
    offered = [case for case in CASES if "any-tape-plays" in case.beliefs]

    assert len(offered) >= len(CASES) // 6


@pytest.mark.parametrize("kind", [CARE, PUT_IN_ORDER], ids=lambda kind: kind.slug)
def test_who_would_play_it_is_found_by_two_kinds(kind: Kind) -> None:
    telling = [each for each in many(kind, 300) if "any-tape-plays" in touched(each)]

    assert len(telling) >= 15
    for question in telling:
        verdict = kind.grade(question, believed(question, {"any-tape-plays"}))
        assert verdict.misconceptions == ("any-tape-plays",)
        assert not verdict.right
