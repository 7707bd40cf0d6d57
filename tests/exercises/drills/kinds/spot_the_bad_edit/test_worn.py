"""Worn tapes: what no edit did, and what helps."""

from itertools import islice

import pytest

from exercises.drills.kinds.spot_the_bad_edit import KIND as SPOT_DESCRIBED
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase
from exercises.drills.kinds.spot_the_bad_edit.mends import Mend
from exercises.drills.kinds.spot_the_bad_edit.wear import MASTER, Wear, dropping_out
from exercises.drills.question import Question
from exercises.drills.setting.change import Mode
from exercises.tape import Assemble, Bench, Insert, Rate, Source, Take, Tape, record
from tests.exercises.drills.made import made

BENCH = Bench.default(Rate.R25)
SHOTS = Source("Tape 4", (Take(0, 2000),))
FILM = record(Tape.blank(3000).with_pass(0, 500, "black"), Assemble(SHOTS, 300, 700, 500), BENCH)


def of_situation(situation: str) -> list[Question]:
    asked = (made(SPOT_DESCRIBED, seed) for seed in range(600))
    return list(islice((each for each in asked if each.situation == situation), 12))


def test_source_drops_out_where_its_worn_frames_were_laid() -> None:
    worn = [Wear("Tape 4", 350, 400, ("sound",)), Wear("Tape 5", 0, 2000, ("picture",))]

    assert list(dropping_out(FILM, worn)) == [(550, 600, "sound")]


def test_edit_master_drops_out_whatever_is_laid_on_it() -> None:
    worn = [Wear(MASTER, 450, 550, ("picture",))]
    again = record(FILM, Insert(SHOTS, 1000, 1200, 500, picture=True, sound=False), BENCH)

    for tape in (FILM, again):
        assert list(dropping_out(tape, worn)) == [(450, 500, "picture"), (500, 550, "picture")]


def test_no_recording_mends_a_worn_edit_master() -> None:
    for question in of_situation("worn-edit-master"):
        case = EditsCase.from_json(question.key)

        assert (question.right["edit"], question.right["mend"]) == ("tape", "another-tape")
        assert [mode for mode in Mode if Mend(case, mode).works()] == []


def test_another_take_mends_what_a_worn_source_brought_in() -> None:
    for question in of_situation("worn-source-tape"):
        case = EditsCase.from_json(question.key)

        assert question.right["edit"] == "tape"
        assert Mend(case, Mode(question.right["mend"])).works()


def test_suspecting_a_tape_that_is_worn_reveals_nothing() -> None:
    question = of_situation("worn-source-tape")[0]

    assert SPOT_DESCRIBED.grade(question, {**question.right, "mend": "leave"}).misconceptions == ()
    assert question.reveals["edit"] == {}


def test_tracking_of_the_player_is_adjusted_where_all_that_plays_has_streaks() -> None:
    for question in of_situation("player-that-is-off"):
        pictures = [row[1] for row in question.shown["rows"] if row[1] != "snow"]

        assert question.right == {"fault": "nothing", "edit": "nothing", "mend": "tracking"}
        assert {"streaks" in picture for picture in pictures} == {True}
        assert "on the recorder it plays well" in question.shown["film"]


@pytest.mark.parametrize("situation", ["worn-edit-master", "worn-source-tape"])
def test_place_that_is_worn_is_told(situation: str) -> None:
    for question in of_situation(situation):
        told = f"{question.shown['story']} {question.shown['film']}"

        assert "flashed in the picture" in told or "the sound dipped" in told
