"""Spot it by eye: how often there is nothing, what the model says, what the words say."""

from collections import Counter

import pytest

from exercises.drills.judging.spotted import grade
from exercises.drills.kinds.spot_by_eye import KIND as SPOT_BY_EYE
from exercises.drills.kinds.spot_by_eye.faults import Seen, stretches, worn
from exercises.drills.kinds.spot_by_eye.situations import FAULTS, WELL
from exercises.drills.question import Question
from exercises.tape import read_edit_session
from tests.exercises.drills.made import many

SEEDS = range(400)
NAMES = ("tracking", "skew", "flat", "clip", "jump", "flash", "generation", "roll", "snow", "fault")


def questions() -> list[Question]:
    return many(SPOT_BY_EYE, len(SEEDS))


def asked_words(question: Question) -> str:
    media = question.media[: len(question.shown["shows"])]
    return " ".join(word for medium in media for word in medium["words"])


def test_nothing_is_wrong_about_as_often_as_any_one_fault_is() -> None:
    clean = sum(question.right["fault"] == "nothing" for question in questions())

    assert 0.05 * len(SEEDS) < clean < 0.17 * len(SEEDS)


def test_every_fault_and_situation_occurs() -> None:
    names = {question.situation.rpartition(", ")[0] for question in questions()}

    assert {question.right["fault"] for question in questions()} == {*Seen, "nothing"}
    assert names == {situation.name for situation in (*FAULTS, *WELL)}


def test_every_form_has_faults_and_none() -> None:
    found = Counter(
        (
            question.media[0]["form"],
            len(question.shown["shows"]),
            question.right["fault"] == "nothing",
        )
        for question in questions()
    )

    forms = {("still", 1), ("still", 2), ("motion", 1)}
    assert set(found) == {(*form, clean) for form in forms for clean in (True, False)}


def test_right_answer_is_what_the_tape_model_finds_at_the_cut() -> None:
    for question in questions():
        session = read_edit_session(question.key["session"])
        cut = max(edit.at for edit in session.edits)
        tape = session.recorded()
        around = [
            *stretches(tape, session.bench, cut - 12, cut + 9),
            *worn(tape, question.key["worn"], cut - 12, cut + 9),
        ]
        kinds = {each.seen.value for each in around} or {"nothing"}

        if "motion" not in question.situation and "where" not in question.right:
            assert question.right["fault"] in kinds | {"nothing"}  # one side of the cut is shown
        else:
            assert kinds == {question.right["fault"]}


def test_words_name_no_fault() -> None:
    told = [asked_words(question).lower() for question in questions()]

    assert [name for name in NAMES if any(name in words for words in told)] == []


def test_words_are_told_alike_of_faults_and_of_none() -> None:
    """A full stop more would say which it is; of snow there is no more to tell."""
    counts: dict[bool, set[int]] = {True: set(), False: set()}
    for question in questions():
        if question.media[0]["form"] == "still" and question.right["fault"] != "snow":
            clean = question.right["fault"] == "nothing"
            counts[clean].add(question.media[0]["words"][0].count(". "))

    assert counts[True] == counts[False] == {5}


@pytest.mark.parametrize(
    ("fault", "sentence"),
    [
        (Seen.NOISE_BAND, "White streaks lie across it"),
        (Seen.BENT, "The top of upright lines lies"),
        (Seen.CLIPPED, "all alike, without detail"),
        (Seen.GENERATIONS, "fine detail is soft"),
        (Seen.SNOW, "No picture: moving grey grain"),
        (Seen.WORN, "Single white streaks lie here and there"),
    ],
)
def test_fault_can_be_told_from_its_words(fault: Seen, sentence: str) -> None:
    found = [question for question in questions() if question.right["fault"] == fault]

    assert found
    assert [question.situation for question in found if sentence not in asked_words(question)] == []


@pytest.mark.parametrize("sentence", ["hite streaks lie", "all alike", "is soft", "No picture"])
def test_clean_pictures_have_none_of_it(sentence: str) -> None:
    clean = [question for question in questions() if question.right["fault"] == "nothing"]

    assert [each.situation for each in clean if sentence in asked_words(each)] == []


def test_feedback_shows_it_beside_the_clean_one_and_the_one_chosen() -> None:
    question = next(each for each in questions() if each.right["fault"] == Seen.NOISE_BAND)
    wrong = {**question.right, "fault": Seen.BENT.value}

    verdict = grade(question, wrong)

    titles = [question.media[number]["title"] for number in verdict.feedback["pictures"]]
    assert titles == ["As it is", "Without the fault", "What was chosen looks like this"]
    assert verdict.misconceptions == ("tracking-skew-swapped",)


def test_nothing_wrong_is_shown_beside_the_fault_that_was_chosen() -> None:
    question = next(each for each in questions() if each.right["fault"] == "nothing")
    verdict = grade(question, {**question.right, "fault": Seen.ROLL.value})

    titles = [question.media[number]["title"] for number in verdict.feedback["pictures"]]
    assert titles == ["As it is", "What was chosen looks like this"]


def test_one_part_right_is_part_of_the_marks() -> None:
    question = next(each for each in questions() if each.right.get("where") == "after")
    verdict = grade(question, {**question.right, "where": "before"})

    assert (verdict.right, verdict.score) == (False, 50)


def test_worn_tape_has_streaks_of_its_own_that_no_edit_made() -> None:
    found = [question for question in questions() if question.right["fault"] == Seen.WORN]
    still = next(each for each in found if each.media[0]["form"] == "still" and each.key["worn"])

    assert {each.key["happened"][0].endswith("No edit did it.") for each in found} == {True}
    assert {len(each.reveals["fault"]) for each in found} == {0}
    assert any(each["picture"]["look"].get("dropouts") for each in still.media[:2])


@pytest.mark.parametrize("place", ["before", "after"])
def test_picture_before_a_hole_is_shown_as_it_was_meant(place: str) -> None:
    snow = (each for each in questions() if each.right == {"fault": "snow", "where": place})
    question = next(snow)
    clean = question.media[question.key["afterwards"][-1]]

    assert clean["title"] == "Without the fault"
    assert "grey grain" not in clean["words"][0]
