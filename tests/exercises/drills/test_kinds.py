"""What every kind of drill keeps to."""

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from exercises.drills.asks import Choice, Dial
from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.drills.register import KINDS, kind
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.mastery.skills import SKILLS
from tests.answers import typed
from tests.believers import believed, touched
from tests.exercises.drills.each import EACH_JUDGED, EACH_KIND
from tests.exercises.drills.made import answers, graded, made, many

ROOT = Path(__file__).parents[3]
SEEDS = range(40)
ASKED_OF = 300
BESIDE = 2  # positions of a control that may be right beside the best


def right_answer(drill: Kind, seed: int) -> dict[str, Any]:
    """The answer that the key calls right; any, where an instructor reads it."""
    return dict(made(drill, seed).right) or answers(drill, seed)[0]


def texts(value: object) -> list[str]:
    """Every string inside a JSON-able value."""
    if isinstance(value, str):
        return [value]
    if isinstance(value, dict):
        return [text for item in value.values() for text in texts(item)]
    if isinstance(value, (list, tuple)):
        return [text for item in value for text in texts(item)]
    return []


def stored(question: Question) -> Question:
    return Question.from_json(json.loads(json.dumps(question.as_json())))


def test_register_knows_each_kind_by_its_slug() -> None:
    assert {slug: kind(slug).slug for slug in KINDS} == {slug: slug for slug in KINDS}


@EACH_KIND
def test_kind_names_the_skills_that_its_questions_practise(drill: Kind) -> None:
    practised = {question.skill for question in many(drill, 200)}

    assert set(drill.skills) == practised <= set(SKILLS)


@EACH_KIND
def test_same_seed_makes_the_same_question(drill: Kind) -> None:
    assert [seed for seed in range(20) if drill.make(seed) != made(drill, seed)] == []


PROGRAM = """
import json
from exercises.drills.register import KINDS
print(json.dumps([KINDS[slug].make(seed).as_json() for slug in KINDS for seed in range(8)]))
"""


@pytest.mark.parametrize("hash_seed", ["1", "2"])
def test_same_seed_makes_the_same_question_in_every_process(hash_seed: str) -> None:
    elsewhere = subprocess.run(
        [sys.executable, "-c", PROGRAM],
        cwd=ROOT,
        env={**os.environ, "PYTHONHASHSEED": hash_seed},
        capture_output=True,
        check=True,
    ).stdout
    here = [made(each, seed).as_json() for each in KINDS.values() for seed in range(8)]

    assert elsewhere.decode().strip() == json.dumps(here)


@EACH_KIND
def test_question_survives_storing(drill: Kind) -> None:
    assert [seed for seed in SEEDS if stored(made(drill, seed)) != made(drill, seed)] == []


@EACH_KIND
def test_stored_question_is_graded_alike(drill: Kind) -> None:
    for seed in range(12):
        again = stored(made(drill, seed))
        for number, answer in list(enumerate(answers(drill, seed)))[::5]:
            fresh = graded(drill, seed, number)

            assert drill.grade(again, answer) == fresh, seed
            assert json.loads(json.dumps(fresh.feedback)) == fresh.feedback, seed


@EACH_JUDGED
def test_right_answer_is_graded_right_and_none_beside_it(drill: Kind) -> None:
    for seed in range(8):
        question, right = made(drill, seed), right_answer(drill, seed)
        tried = list(enumerate(answers(drill, seed)))
        rights = [answer for number, answer in tried if graded(drill, seed, number).right]

        assert drill.grade(question, right).right, seed
        assert [answer for answer in rights if not near(question, answer)] == [], seed


def near(question: Question, answer: dict[str, Any]) -> bool:
    """Whether an answer is that of the key, but for controls that stand a little beside it."""
    dials = [ask.name for ask in question.asks if isinstance(ask, Dial)]
    beside = {name: answer[name] - question.right[name] for name in dials}
    return max(map(abs, beside.values()), default=0) <= BESIDE and {
        **answer,
        **{name: question.right[name] for name in dials},
    } == dict(question.right)


@EACH_JUDGED
def test_right_answer_scores_all_and_reveals_nothing(drill: Kind) -> None:
    for seed in SEEDS:
        verdict = drill.grade(made(drill, seed), right_answer(drill, seed))

        assert (verdict.right, verdict.score, verdict.misconceptions) == (True, 100, ()), seed


@EACH_KIND
def test_believer_of_one_belief_is_diagnosed(drill: Kind) -> None:
    for seed, question in enumerate(many(drill, 100)):
        touches = touched(question)
        found = [drill.grade(question, believed(question, {belief})) for belief in touches]

        assert [each.misconceptions for each in found] == [(each,) for each in touches], seed


def test_every_misconception_is_revealed_by_some_kind() -> None:
    left = set(MISCONCEPTIONS)
    for seed in range(ASKED_OF):
        left -= {belief for each in KINDS.values() for belief in touched(made(each, seed))}
        if not left:
            break

    assert left == set()


@EACH_KIND
def test_partial_credit_is_told_in_words(drill: Kind) -> None:
    for seed in range(15):
        for number in range(7 * seed, 7 * seed + 8):
            verdict = graded(drill, seed, number % len(answers(drill, seed)))

            if 0 < verdict.score < 100:
                assert verdict.feedback["credit"].endswith("."), seed


@EACH_JUDGED
def test_right_answer_is_read_back_as_it_was_typed(drill: Kind) -> None:
    for seed in range(12):
        question = made(drill, seed)
        sent = typed(question, right_answer(drill, seed))

        assert {ask.name: ask.read(sent[ask.name]) for ask in question.asks} == question.right, seed


@EACH_KIND
def test_revealed_beliefs_are_of_the_list(drill: Kind) -> None:
    for seed in range(12):
        for number in range(0, len(answers(drill, seed)), 3):
            revealed = graded(drill, seed, number).misconceptions

            assert [MISCONCEPTIONS[belief].id for belief in revealed] == list(revealed), seed


@EACH_KIND
def test_answer_that_is_missing_is_refused_with_a_sentence(drill: Kind) -> None:
    question = made(drill, 1)
    answer = right_answer(drill, 1)
    name, legend = question.asks[-1].name, question.asks[-1].legend
    del answer[name]

    with pytest.raises(ValueError, match=r"^There is no answer to") as refusal:
        drill.grade(question, answer)

    assert str(refusal.value) == f"There is no answer to “{legend}”"


@EACH_KIND
def test_answer_that_is_no_option_is_refused_with_a_sentence(drill: Kind) -> None:
    question = made(drill, 1)
    for value in ("", "Assemble", "0", "assemble ", "x" * 10_000):
        answer = right_answer(drill, 1) | {question.asks[0].name: value}

        with pytest.raises(ValueError, match=r"^That is not one of the answers"):
            drill.grade(question, answer)


@EACH_KIND
def test_answer_to_nothing_that_was_asked_is_refused_with_a_sentence(drill: Kind) -> None:
    with pytest.raises(ValueError, match=r"^Nothing named 'key' is asked.$"):
        drill.grade(made(drill, 1), right_answer(drill, 1) | {"key": "x"})


@EACH_KIND
def test_options_of_an_ask_differ(drill: Kind) -> None:
    for seed in SEEDS:
        for ask in made(drill, seed).asks:
            words = {ask.in_words(answer) for answer in ask.every()}
            different = {json.dumps(answer) for answer in ask.every()}

            assert len(different) == len(ask.every()) == len(words), seed


@EACH_KIND
def test_options_stand_in_the_same_order_in_every_question(drill: Kind) -> None:
    orders: dict[tuple[str, frozenset[str]], set[tuple[str, ...]]] = {}
    for seed in SEEDS:
        for ask in made(drill, seed).asks:
            if not isinstance(ask, Choice):
                continue
            order = tuple(ask.every())
            orders.setdefault((ask.name, frozenset(order)), set()).add(order)

    assert {place: len(found) for place, found in orders.items()} == dict.fromkeys(orders, 1)


def test_both_rates_occur() -> None:
    """In every kind that is about a tape."""
    rates: dict[str, set[str]] = {}
    for slug, each in KINDS.items():
        keys = [question.key for question in many(each, 20)]
        if any("session" in key for key in keys):
            rates[slug] = {key["session"]["rate"] for key in keys}

    assert len(rates) > len(KINDS) // 2
    assert rates == {slug: {"29.97", "25"} for slug in rates}


@EACH_KIND
def test_shown_holds_nothing_of_the_key(drill: Kind) -> None:
    for seed in SEEDS:
        question = made(drill, seed)
        written = json.dumps(question.shown)
        names = [f'"{name}":' for name in ("reveals", "wants", "right", "misconceptions")]

        assert set(question.shown) & set(question.key) == set(), seed
        assert [name for name in names if name in written] == [], seed


@EACH_KIND
def test_texts_are_whole_sentences_without_gaps(drill: Kind) -> None:
    marks = ("  ", "{", "}", " .", " ,", "..", "'", " a a", "the the")
    for seed in SEEDS:
        feedback = graded(drill, seed, seed % len(answers(drill, seed))).feedback
        words = [text for text in texts(made(drill, seed).shown) + texts(feedback) if " " in text]

        assert [text for text in words if any(mark in text for mark in marks)] == [], seed


@EACH_KIND
def test_questions_are_many(drill: Kind) -> None:
    asked = many(drill, ASKED_OF)

    assert len({json.dumps(question.shown) for question in asked}) == ASKED_OF


@EACH_KIND
def test_huge_seed_makes_a_question(drill: Kind) -> None:
    seed = 2**53 - 1
    verdict = drill.grade(made(drill, seed), right_answer(drill, seed))

    assert (verdict.right, verdict.pending) == (not drill.by_hand, drill.by_hand)
