"""Mends made again frame by frame and held against the planner's; bad input; partial credit."""

import json
from itertools import product
from typing import Any

import pytest

from exercises.drills.asks import AnswerRefused, Json, Table
from exercises.drills.kind import slug_of
from exercises.drills.kinds.mend_it import KIND as MEND_IT
from exercises.drills.kinds.mend_it.repair import Repair
from exercises.drills.kinds.mend_it.situations import SITUATIONS
from exercises.drills.question import Question
from exercises.tape import Brief, Plan, Side, Wanted, plan, read_edit_session
from tests.believers import believed
from tests.exercises.drills.frames import Machines, threaded
from tests.exercises.drills.made import many


def asked(count: int = 120) -> list[Question]:
    return many(MEND_IT, count)


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


def test_right_recordings_mend_it_frame_by_frame() -> None:
    for seed, question in enumerate(asked(40)):
        session = question.key["session"]
        spoilt = threaded(session)
        mended = threaded(session, [*session["edits"], *edits(question)])

        assert fulfils(mended, question.key["films"][-1]), seed
        assert not fulfils(spoilt, question.key["films"][-1]), seed


def fulfils(machines: Machines, film: list[Json]) -> bool:
    """Whether all that is wanted plays cleanly."""
    return all(
        machines.clean(want["track"])[want["start"] : want["end"]]
        == [(want["source"], want["frame"] + n) for n in range(want["end"] - want["start"])]
        for want in film
    )


def wanted(question: Question, track: Side) -> tuple[Wanted, ...]:
    return tuple(
        Wanted(track, w["source"], w["frame"], w["frame"] + w["end"] - w["start"], w["start"])
        for w in question.key["films"][-1]
        if w["track"] == track
    )


def test_planner_needs_as_many_recordings() -> None:
    """But between shots: the planner lays black only where it is given some."""
    for seed, question in enumerate(asked(24)):
        if question.situation == "short-black-between":
            continue
        session = read_edit_session(question.key["session"])
        brief = Brief(picture=wanted(question, "picture"), sound=wanted(question, "sound"))
        best = plan(brief, session.recorded(), sources=session.sources, bench=session.bench)

        assert isinstance(best, Plan), seed
        assert len(best.edits) == len(question.right["recordings"]), seed


@pytest.mark.parametrize("situation", [slug_of(each.__name__) for each in SITUATIONS])
def test_no_single_recording_does_where_two_are_asked_for(situation: str) -> None:
    question = next(each for each in asked() if each.situation == situation)
    repair = Repair.from_json(question.key)
    table = question.asks[0]
    assert isinstance(table, Table)
    singles = product(*([option.value for option in column.options] for column in table.columns))
    enough = [row for row in map(list, singles) if not repair.left(repair.mended([row]))]

    rows = question.right["recordings"]
    assert (rows[0] in enough) is (len(rows) == 1)
    assert bool(enough) is (len(rows) == 1)


def test_subsets_of_the_beliefs_choose_otherwise() -> None:
    for question in asked():
        answers = [json.dumps(answer) for _, answer in question.believed]
        beliefs = {belief for held, _ in question.believed for belief in held}

        assert len(set(answers)) == len(answers) == 2 ** len(beliefs) > 1


def test_beliefs_are_touched_by_situations_that_fit_them() -> None:
    situations: dict[str, set[str]] = {}
    for question in asked():
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
        for each in asked()
        if each.situation == "assembled-within" and "assemble-ends-clean" in each.key["alone"]
    )
    verdict = MEND_IT.grade(question, question.key["alone"]["assemble-ends-clean"])

    assert verdict.misconceptions == ("assemble-ends-clean",)


def test_too_many_recordings_of_somebody_who_expects_a_push_show_it() -> None:
    question = next(each for each in asked() if each.situation == "picture-switched-on")
    verdict = MEND_IT.grade(question, believed(question, {"insert-pushes-along"}))

    assert (verdict.score, verdict.misconceptions) == (75, ("insert-pushes-along",))
    assert verdict.feedback["credit"] == "The film is mended, with 3 recordings; 1 would do."


def test_tape_that_was_expected_stands_beside_the_tape_as_it_is() -> None:
    question = next(each for each in asked() if each.situation == "hole")
    feedback = MEND_IT.grade(question, believed(question, {"insert-lays-pulses"})).feedback

    assert feedback["expected"] is not None
    assert feedback["expected"] != feedback["after"]


def test_every_situation_occurs() -> None:
    assert {question.situation for question in asked()} == {
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
    question = next(each for each in asked() if each.situation == situation)
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
    question = next(each for each in asked() if each.situation == "hole")
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
        asked()[0].asks[0].read(typed)

    assert str(refusal.value).startswith(sentence)
