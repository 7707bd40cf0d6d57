"""Spot it by ear: how often there is nothing, what the model says, what the words say."""

from collections import Counter

import pytest

from exercises.drills.judging.spotted import grade
from exercises.drills.kinds.spot_by_ear import KIND as SPOT_BY_EAR
from exercises.drills.kinds.spot_by_ear.answers import FAULT, NOTHING, TAPE
from exercises.drills.kinds.spot_by_ear.faults import Heard, stretches
from exercises.drills.kinds.spot_by_ear.situations import FAULTS, WELL, WORN
from exercises.drills.question import Question
from exercises.tape import read_edit_session
from tests.exercises.drills.made import many

SEEDS = range(400)
NAMES = ("clipped", "jump", "weak", "distort", "noisy", "gain", " hole", "fault", "extra")


def questions() -> list[Question]:
    return many(SPOT_BY_EAR, len(SEEDS))


def words(question: Question) -> str:
    return " ".join(question.media[0]["words"])


def test_no_answer_is_right_much_more_often_than_another() -> None:
    counts = Counter(question.right["fault"] for question in questions())

    assert set(counts) == {option.value for option in FAULT.options}
    assert max(counts.values()) / len(SEEDS) <= 1 / len(FAULT.options) + 0.05


def test_length_of_a_clip_tells_no_fault() -> None:
    for fault in (*Heard, TAPE, NOTHING):
        after = {
            round((clip["end"] - clip["start"]) / 30)
            for question in questions()
            if question.right["fault"] == fault
            for clip in question.media[:1]
        }

        assert len(after) >= 4


def test_every_situation_occurs() -> None:
    names = {question.situation for question in questions()}

    assert names == {situation.name for situation in (*FAULTS, *WELL, WORN)}


def test_right_answer_is_what_the_tape_model_finds_in_the_clip() -> None:
    for question in questions():
        clip = question.media[0]
        session = read_edit_session(clip["session"])
        found = stretches(session.recorded(), session.bench, clip["start"], clip["end"])
        worn = [sound for sound in clip["sounds"].values() if sound["worn"] is not None]

        expected = {each.heard.value for each in found} | ({TAPE} if worn else set())
        assert (expected or {NOTHING}) == {question.right["fault"]}


def test_clip_that_was_made_well_has_nothing_wrong() -> None:
    for question in questions():
        for clip in question.media[1:]:
            session = read_edit_session(clip["session"])

            assert stretches(session.recorded(), session.bench, clip["start"], clip["end"]) == []


def test_words_name_no_fault() -> None:
    told = [words(question).lower() for question in questions()]

    assert [name for name in NAMES if any(name in each for each in told)] == []


def test_words_are_told_alike_of_faults_and_of_none() -> None:
    assert {len(question.media[0]["words"]) for question in questions()} == {9}


SIGNS: dict[str, str] = {
    TAPE: "dips for a moment",
    Heard.WORD: " of its ",
    Heard.BREATH: "a breath right",
    Heard.DISTORTED: "parts are rough",
    Heard.PAUSES: "the room swells",
    Heard.WAVERS: "The pitch wavers",
    Heard.HOLE: "Not even the room",
}


@pytest.mark.parametrize(("fault", "sign"), SIGNS.items(), ids=SIGNS)
def test_fault_and_nothing_else_can_be_told_from_its_words(fault: str, sign: str) -> None:
    signed = [question.right["fault"] for question in questions() if sign in words(question)]
    right = [question for question in questions() if question.right["fault"] == fault]

    assert right
    assert signed == [fault] * len(right)


@pytest.mark.parametrize(
    ("fault", "belief"),
    [
        (Heard.WORD, "words-can-spare"),
        (Heard.BREATH, "words-can-spare"),
        (Heard.DISTORTED, "hotter-is-better"),
        (Heard.PAUSES, "agc-evens-out"),
    ],
)
def test_hearing_nothing_wrong_reveals_a_belief(fault: Heard, belief: str) -> None:
    question = next(each for each in questions() if each.right["fault"] == fault)

    assert grade(question, {"fault": "nothing"}).misconceptions == (belief,)


def test_feedback_plays_it_beside_the_one_made_well() -> None:
    question = next(each for each in questions() if each.right["fault"] == Heard.BREATH)
    verdict = grade(question, {"fault": "nothing"})

    titles = [question.media[number]["title"] for number in verdict.feedback["pictures"]]
    assert titles == ["The sound across the cut", "The same cut, made well"]


def test_hole_in_the_sound_is_not_called_one_in_the_picture() -> None:
    holes = [each for each in questions() if each.right["fault"] == Heard.HOLE]
    told = {fault[-1] for each in holes for fault in each.key["map"]["faults"]}

    assert [sentence for sentence in told if sentence.startswith("no picture")] == []
    assert any(sentence.startswith("neither picture nor sound") for sentence in told)
