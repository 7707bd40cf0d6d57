"""Mends made again frame by frame and held against the planner's; bad input; partial credit."""

import json
from functools import cache
from itertools import product
from typing import Any

import pytest

from exercises.drills.asks import AnswerRefused, Table
from exercises.drills.kind import slug_of
from exercises.drills.kinds.mend_it import KIND as MEND_IT
from exercises.drills.kinds.mend_it.repair import Repair
from exercises.drills.kinds.mend_it.situations import SITUATIONS
from exercises.drills.question import Question
from exercises.tape import Brief, Plan, Side, Wanted, plan, read_edit_session
from tests.believers import believed
from tests.exercises.drills.frames import threaded


@cache
def many() -> list[Question]:
    return [MEND_IT.make(seed) for seed in range(120)]


def edits(question: Question) -> list[dict[str, Any]]:
    """The right recordings as a session document tells them."""
    found = []
    for mode, shot, place in question.right["recordings"]:
        offer = question.key["offers"][int(shot)]
        edit = {
            "source": offer["tape"],
            "in": offer["in_"],
            "out": offer["out"],
            "at": question.key["places"][int(place)],
        }
        tracks = {"picture": mode != "insert-sound", "sound": mode != "insert-picture"}
        found.append(
            {**edit, "mode": "assemble"}
            if mode == "assemble"
            else {**edit, "mode": "insert", **tracks}
        )
    return found


@pytest.mark.parametrize("seed", range(40))
def test_right_recordings_mend_it_frame_by_frame(seed: int) -> None:
    key = many()[seed].key
    spoilt = threaded(key["session"])
    mended = threaded(key["session"], [*key["session"]["edits"], *edits(many()[seed])])
    for machines, whole in ((spoilt, False), (mended, True)):
        fulfilled = [
            machines.clean(want["track"])[want["start"] : want["end"]]
            == [
                (want["source"], want["frame"] + offset)
                for offset in range(want["end"] - want["start"])
            ]
            for want in key["films"][-1]
        ]
        assert all(fulfilled) is whole


def wanted(question: Question, track: Side) -> tuple[Wanted, ...]:
    return tuple(
        Wanted(track, w["source"], w["frame"], w["frame"] + w["end"] - w["start"], w["start"])
        for w in question.key["films"][-1]
        if w["track"] == track
    )


PLANNED = [
    seed for seed in range(24) if MEND_IT.make(seed).situation != "short-black-between"
]  # the planner lays black only where it is given some


@pytest.mark.parametrize("seed", PLANNED)
def test_planner_needs_as_many_recordings(seed: int) -> None:
    question = many()[seed]
    session = read_edit_session(question.key["session"])
    brief = Brief(picture=wanted(question, "picture"), sound=wanted(question, "sound"))
    best = plan(brief, session.recorded(), sources=session.sources, bench=session.bench)

    assert isinstance(best, Plan)
    assert len(best.edits) == len(question.right["recordings"])


@pytest.mark.parametrize("situation", [slug_of(each.__name__) for each in SITUATIONS])
def test_no_single_recording_does_where_two_are_asked_for(situation: str) -> None:
    question = next(each for each in many() if each.situation == situation)
    repair = Repair.from_json(question.key)
    table = question.asks[0]
    assert isinstance(table, Table)
    singles = product(*([option.value for option in column.options] for column in table.columns))
    enough = [row for row in map(list, singles) if not repair.left(repair.mended([row]))]

    rows = question.right["recordings"]
    assert (rows[0] in enough) is (len(rows) == 1)
    assert bool(enough) is (len(rows) == 1)


def test_subsets_of_the_beliefs_choose_otherwise() -> None:
    for question in many():
        answers = [json.dumps(answer) for _, answer in question.believed]
        beliefs = {belief for held, _ in question.believed for belief in held}

        assert len(set(answers)) == len(answers) == 2 ** len(beliefs) > 1


def test_beliefs_are_touched_by_situations_that_fit_them() -> None:
    situations: dict[str, set[str]] = {}
    for question in many():
        for held, _ in question.believed:
            for belief in held:
                situations.setdefault(belief, set()).add(question.situation)

    assert {belief: len(found) for belief, found in situations.items()} == {
        "assemble-ends-clean": 2,
        "insert-lays-pulses": 7,
        "insert-pushes-along": 6,
        "mend-later": 2,
        "no-master-run-up": 1,
        "no-source-run-up": 4,
    }


def test_choice_of_a_belief_left_out_of_the_question_is_known_too() -> None:
    question = next(
        each
        for each in many()
        if each.situation == "assembled-within" and "assemble-ends-clean" in each.key["alone"]
    )
    verdict = MEND_IT.grade(question, question.key["alone"]["assemble-ends-clean"])

    assert verdict.misconceptions == ("assemble-ends-clean",)


def test_too_many_recordings_of_somebody_who_expects_a_push_show_it() -> None:
    question = next(each for each in many() if each.situation == "picture-switched-on")
    verdict = MEND_IT.grade(question, believed(question, {"insert-pushes-along"}))

    assert (verdict.score, verdict.misconceptions) == (75, ("insert-pushes-along",))
    assert verdict.feedback["credit"] == "The film is mended, with 3 recordings; 1 would do."


def test_tape_that_was_expected_stands_beside_the_tape_as_it_is() -> None:
    question = next(each for each in many() if each.situation == "hole")
    feedback = MEND_IT.grade(question, believed(question, {"insert-lays-pulses"})).feedback

    assert feedback["expected"] is not None
    assert feedback["expected"] != feedback["after"]


def test_every_situation_occurs() -> None:
    assert {question.situation for question in many()} == {
        slug_of(each.__name__) for each in SITUATIONS
    }


@pytest.mark.parametrize(
    ("situation", "mode", "belief"),
    [
        ("assembled-within", "insert-both", "insert-lays-pulses"),
        ("assembled-within", "assemble", "assemble-ends-clean"),
        ("inserted-past-the-end", "insert-both", "insert-lays-pulses"),
        ("early-insert", "assemble", "assemble-ends-clean"),
    ],
)
def test_wrong_recording_shows_the_belief_by_which_it_would_do(
    situation: str, mode: str, belief: str
) -> None:
    question = next(each for each in many() if each.situation == situation)
    found = {
        found
        for shot in range(len(question.key["offers"]))
        for place in range(len(question.key["places"]))
        for found in MEND_IT.grade(
            question, {"recordings": [[mode, str(shot), str(place)]]}
        ).misconceptions
    }

    assert found == {belief}


def test_one_recording_too_many_is_partly_right() -> None:
    question = next(each for each in many() if each.situation == "hole")
    [[mode, shot, place]] = question.right["recordings"]
    rows = [[mode, shot, place], ["insert-both", shot, place]]
    verdict = MEND_IT.grade(question, {"recordings": rows})

    assert (verdict.right, verdict.score) == (False, 75)
    assert verdict.feedback["credit"] == "The film is mended, with 2 recordings; 1 would do."


@pytest.mark.parametrize(
    ("typed", "sentence"),
    [
        ([""] * 9, "Choose from the lists. Nothing has been recorded yet."),
        (["assemble", "0"], "That is not one of the answers. Choose one of those below."),
        (
            ["assemble", "", "0", *[""] * 6],
            "Something is still to be chosen in the row “1st: what”.",
        ),
        (["assemble", "99", "0", *[""] * 6], "That is not one of the answers."),
        (["x" * 10_000, "0", "0", *[""] * 6], "That is not one of the answers."),
        (
            ["assemble", "0", "0", "assemble", "0", "0", "", "", ""],
            "Two rows say the same. Leave one of them empty.",
        ),
    ],
)
def test_bad_answer_is_refused_with_a_sentence(typed: list[str], sentence: str) -> None:
    with pytest.raises(AnswerRefused) as refusal:
        many()[0].asks[0].read(typed)

    assert str(refusal.value).startswith(sentence)
