"""Mends made again frame by frame and held against the planner's; bad input; partial credit."""

from functools import cache
from typing import Any

import pytest

from exercises.drills.asks import AnswerRefused
from exercises.drills.kind import Question
from exercises.drills.mend_it import MEND_IT
from exercises.drills.mend_it.situations import SITUATIONS, name
from exercises.drills.wants import Side
from exercises.tape import Brief, Plan, Wanted, plan, read_session
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
            for want in key["film"]
        ]
        assert all(fulfilled) is whole


def wanted(question: Question, track: Side) -> tuple[Wanted, ...]:
    return tuple(
        Wanted(track, w["source"], w["frame"], w["frame"] + w["end"] - w["start"], w["start"])
        for w in question.key["film"]
        if w["track"] == track
    )


@pytest.mark.parametrize("seed", range(20))
def test_planner_needs_as_many_recordings(seed: int) -> None:
    question = many()[seed]
    session = read_session(question.key["session"])
    brief = Brief(picture=wanted(question, "picture"), sound=wanted(question, "sound"))
    best = plan(brief, session.recorded(), sources=session.sources, bench=session.bench)

    assert isinstance(best, Plan)
    assert len(best.edits) == len(question.right["recordings"])


def test_every_situation_occurs() -> None:
    assert {question.situation for question in many()} == {name(each) for each in SITUATIONS}


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
    assert verdict.feedback["reason"] == "The film is mended, with 2 recordings; 1 would do."


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
