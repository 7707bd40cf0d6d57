from functools import cache

import pytest

from exercises.drills.kinds.choose_the_mode import KIND as CHOOSE_MODE
from exercises.drills.kinds.choose_the_mode.answers import CANNOT
from exercises.drills.question import Question
from exercises.tape import TapeMap
from tests.exercises.drills.made import made


@cache
def of_situation(situation: str, right: str = "") -> Question:
    questions = (made(CHOOSE_MODE, seed) for seed in range(2000))
    return next(
        question
        for question in questions
        if question.situation == situation and right in ("", question.right["mode"])
    )


@pytest.mark.parametrize(
    ("situation", "answer", "beliefs"),
    [
        ("next-shot-on-new-tape", "insert-both", ("insert-lays-pulses",)),
        ("next-shot-on-prepared-tape", "assemble", ("assemble-ends-clean",)),
        ("cutaway", "cannot", ("insert-ends-ragged",)),
        ("cutaway", "assemble", ("assemble-picks-tracks", "assemble-ends-clean")),
        ("cutaway", "insert-both", ()),
        ("narration-past-the-end", "insert-sound", ("sound-needs-no-pulses",)),
        ("picture-past-the-end", "assemble", ("assemble-picks-tracks",)),
        ("make-room", "insert-both", ("insert-pushes-along",)),
        ("short-take-next", "assemble", ("no-source-run-up",)),
        ("short-leader", "assemble", ("no-master-run-up",)),
        ("soon-after-a-new-phase", "insert-picture", ("no-master-run-up",)),
        ("fade-to-black", "insert-picture", ("two-machines-dissolve",)),
        ("hole-without-pulses", "assemble", ("assemble-ends-clean",)),
    ],
)
def test_wrong_answer_reveals_the_belief_behind_it(
    situation: str, answer: str, beliefs: tuple[str, ...]
) -> None:
    question = of_situation(situation)
    verdict = CHOOSE_MODE.grade(question, {"mode": answer})

    assert (verdict.right, verdict.score, verdict.misconceptions) == (False, 0, beliefs)


def test_wrong_answer_shows_both_tapes() -> None:
    question = of_situation("cutaway")
    feedback = CHOOSE_MODE.grade(question, {"mode": "assemble"}).feedback

    assert (feedback["chosen"], feedback["right"]) == ("Assemble", "Insert picture")
    assert feedback["after"] != feedback["before"] != feedback["instead_map"]
    assert feedback["instead"][-1] == (
        "All that is wanted plays cleanly, and all that must stay is untouched."
    )


@pytest.mark.parametrize(
    ("situation", "answer"),
    [
        ("next-shot-on-new-tape", "insert-both"),
        ("next-shot-on-prepared-tape", "assemble"),
        ("make-room", "insert-both"),
        ("short-take-next", "assemble"),
    ],
)
def test_expected_tape_is_clean_where_the_tape_as_it_is_is_not(situation: str, answer: str) -> None:
    feedback = CHOOSE_MODE.grade(of_situation(situation), {"mode": answer}).feedback

    expected, after = (TapeMap.from_json(feedback[name]) for name in ("expected", "after"))
    assert expected.lanes != after.lanes
    assert expected.marks == after.marks
    assert expected.faults is None


def test_who_expects_no_mode_to_do_it_sees_the_right_one_as_they_expect_it() -> None:
    feedback = CHOOSE_MODE.grade(of_situation("cutaway"), {"mode": CANNOT}).feedback

    expected = TapeMap.from_json(feedback["expected"])
    assert expected.lanes != TapeMap.from_json(feedback["instead_map"]).lanes


@pytest.mark.parametrize("answer", ["insert-both", "insert-picture"])
def test_no_tape_is_expected_where_no_belief_is_behind_it(answer: str) -> None:
    feedback = CHOOSE_MODE.grade(of_situation("cutaway"), {"mode": answer}).feedback

    assert feedback["expected"] is None


def test_right_answer_shows_one_tape_before_and_after() -> None:
    question = of_situation("cutaway")
    feedback = CHOOSE_MODE.grade(question, {"mode": "insert-picture"}).feedback

    assert feedback["happened"][-1] == (
        "All that is wanted plays cleanly, and all that must stay is untouched."
    )
    assert (feedback["instead"], feedback["instead_map"]) == ([], None)


def test_impossible_change_tells_why_no_mode_does_it_and_what_to_do() -> None:
    question = of_situation("hole-without-pulses")
    feedback = CHOOSE_MODE.grade(question, {"mode": CANNOT}).feedback
    told = "; ".join(modes for modes, _ in feedback["others"]).lower().split("; ")

    assert sorted(told) == [
        "assemble",
        "insert picture",
        "insert picture and sound",
        "insert sound",
    ]
    assert feedback["advice"].startswith("Assemble the shot, and after it the whole second part")
    assert (feedback["happened"], feedback["after"]) == ([], None)


def test_mode_that_was_chosen_is_not_told_twice() -> None:
    question = of_situation("hole-without-pulses")
    feedback = CHOOSE_MODE.grade(question, {"mode": "assemble"}).feedback

    assert "assemble" not in "; ".join(modes for modes, _ in feedback["others"]).lower()


def test_distance_to_another_film_decides() -> None:
    far, near = (of_situation("up-to-another-film", right) for right in ("assemble", CANNOT))

    assert CHOOSE_MODE.grade(far, {"mode": "assemble"}).right
    assert CHOOSE_MODE.grade(near, {"mode": "assemble"}).misconceptions == ("assemble-ends-clean",)
