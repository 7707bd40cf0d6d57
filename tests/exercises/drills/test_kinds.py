"""What every kind of drill keeps to."""

import hashlib
import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from exercises.drills.asks import Choice, Dial
from exercises.drills.kind import Kind, Question
from exercises.drills.register import KINDS, kind
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.mastery.skills import SKILLS
from tests.answers import every_answer, typed
from tests.believers import believed, touched

ROOT = Path(__file__).parents[3]
EACH_KIND = pytest.mark.parametrize("drill", KINDS.values(), ids=KINDS)
JUDGED = {slug: each for slug, each in KINDS.items() if not each.by_hand}
EACH_JUDGED = pytest.mark.parametrize("drill", JUDGED.values(), ids=JUDGED)
SEEDS = range(60)
ON_TAPE = {slug: each for slug, each in KINDS.items() if "session" in each.make(0).key}
BESIDE = 2  # positions of a control that may be right beside the best


def right_answer(question: Question) -> dict[str, Any]:
    """The answer that the key calls right; any, where an instructor reads it."""
    return dict(question.right) or nth_answer(question, 0)


def nth_answer(question: Question, number: int) -> dict[str, Any]:
    answers = list(every_answer(question))
    return answers[number % len(answers)]


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
    practised = {drill.make(seed).skill for seed in range(200)}

    assert set(drill.skills) == practised <= set(SKILLS)


@EACH_KIND
def test_same_seed_makes_the_same_question(drill: Kind) -> None:
    assert [drill.make(seed) for seed in SEEDS] == [drill.make(seed) for seed in SEEDS]


PROGRAM = """
import json
from exercises.drills.register import KINDS
print(json.dumps([KINDS[slug].make(seed).as_json() for slug in KINDS for seed in range(25)]))
"""


def test_same_seed_makes_the_same_question_in_every_process() -> None:
    made = [
        subprocess.run(
            [sys.executable, "-c", PROGRAM],
            cwd=ROOT,
            env={**os.environ, "PYTHONHASHSEED": hash_seed},
            capture_output=True,
            check=True,
        ).stdout
        for hash_seed in ("1", "2")
    ]
    here = [KINDS[slug].make(seed).as_json() for slug in KINDS for seed in range(25)]

    assert made[0] == made[1]
    assert json.loads(made[0]) == json.loads(json.dumps(here))


@EACH_KIND
def test_question_survives_storing(drill: Kind) -> None:
    for seed in SEEDS:
        question = drill.make(seed)

        assert stored(question) == question


@EACH_KIND
def test_stored_question_is_graded_alike(drill: Kind) -> None:
    for seed in range(12):
        question = drill.make(seed)
        for answer in list(every_answer(question))[::5]:
            fresh = drill.grade(question, answer)

            assert drill.grade(stored(question), answer) == fresh
            assert json.loads(json.dumps(fresh.feedback)) == fresh.feedback


@EACH_JUDGED
def test_right_answer_is_graded_right_and_none_beside_it(drill: Kind) -> None:
    for seed in range(8):
        question = drill.make(seed)
        tried = [*every_answer(question), right_answer(question)]
        rights = [answer for answer in tried if drill.grade(question, answer).right]

        alike = [right for right in rights if near(question, right)]
        assert right_answer(question) in rights
        assert alike == rights


def near(question: Question, answer: dict[str, Any]) -> bool:
    """Whether an answer is that of the key, but for controls that stand a little beside it."""
    dials = [ask.name for ask in question.asks if isinstance(ask, Dial)]
    beside = {name: answer[name] - question.right[name] for name in dials}
    return max(map(abs, beside.values()), default=0) <= BESIDE and {
        **answer,
        **{name: question.right[name] for name in dials},
    } == right_answer(question)


@EACH_JUDGED
def test_right_answer_scores_all_and_reveals_nothing(drill: Kind) -> None:
    for seed in SEEDS:
        question = drill.make(seed)
        verdict = drill.grade(question, right_answer(question))

        assert (verdict.right, verdict.score, verdict.misconceptions) == (True, 100, ())


@EACH_KIND
def test_believer_of_one_belief_is_diagnosed(drill: Kind) -> None:
    for seed in range(200):
        question = drill.make(seed)
        touches = touched(question)
        found = [drill.grade(question, believed(question, {belief})) for belief in touches]

        assert [verdict.misconceptions for verdict in found] == [(each,) for each in touches]


def test_every_misconception_is_revealed_by_some_kind() -> None:
    left = set(MISCONCEPTIONS)
    for seed in range(300):
        left -= {belief for each in KINDS.values() for belief in touched(each.make(seed))}
        if not left:
            break

    assert left == set()


@EACH_KIND
def test_partial_credit_is_told_in_words(drill: Kind) -> None:
    for seed in range(30):
        question = drill.make(seed)
        for number in range(8):
            verdict = drill.grade(question, nth_answer(question, 7 * seed + number))

            if 0 < verdict.score < 100:
                assert verdict.feedback["credit"].endswith(".")


@EACH_JUDGED
def test_right_answer_is_read_back_as_it_was_typed(drill: Kind) -> None:
    for seed in range(12):
        question = drill.make(seed)
        sent = typed(question, right_answer(question))

        assert {ask.name: ask.read(sent[ask.name]) for ask in question.asks} == question.right


@EACH_KIND
def test_revealed_beliefs_are_of_the_list(drill: Kind) -> None:
    for seed in range(12):
        question = drill.make(seed)
        for answer in list(every_answer(question))[::3]:
            revealed = drill.grade(question, answer).misconceptions

            assert [MISCONCEPTIONS[belief].id for belief in revealed] == list(revealed)


@EACH_KIND
def test_answer_that_is_missing_is_refused_with_a_sentence(drill: Kind) -> None:
    question = drill.make(1)
    answer = right_answer(question)
    name, legend = question.asks[-1].name, question.asks[-1].legend
    del answer[name]

    with pytest.raises(ValueError, match=r"^There is no answer to") as refusal:
        drill.grade(question, answer)

    assert str(refusal.value) == f"There is no answer to “{legend}”"


@EACH_KIND
@pytest.mark.parametrize("value", ["", "Assemble", "0", "assemble ", "x" * 10_000])
def test_answer_that_is_no_option_is_refused_with_a_sentence(drill: Kind, value: str) -> None:
    question = drill.make(1)
    answer = right_answer(question) | {question.asks[0].name: value}

    with pytest.raises(ValueError, match=r"^That is not one of the answers"):
        drill.grade(question, answer)


@EACH_KIND
def test_answer_to_nothing_that_was_asked_is_refused_with_a_sentence(drill: Kind) -> None:
    question = drill.make(1)

    with pytest.raises(ValueError, match=r"^Nothing named 'key' is asked.$"):
        drill.grade(question, right_answer(question) | {"key": "x"})


@EACH_KIND
def test_options_of_an_ask_differ(drill: Kind) -> None:
    for seed in SEEDS:
        for ask in drill.make(seed).asks:
            words = {ask.in_words(answer) for answer in ask.every()}
            answers = {json.dumps(answer) for answer in ask.every()}

            assert len(answers) == len(ask.every()) == len(words)


@EACH_KIND
def test_options_stand_in_the_same_order_in_every_question(drill: Kind) -> None:
    orders: dict[tuple[str, frozenset[str]], set[tuple[str, ...]]] = {}
    for seed in SEEDS:
        for ask in drill.make(seed).asks:
            if not isinstance(ask, Choice):
                continue
            order = tuple(ask.every())
            orders.setdefault((ask.name, frozenset(order)), set()).add(order)

    assert {place: len(found) for place, found in orders.items()} == dict.fromkeys(orders, 1)


@pytest.mark.parametrize("drill", ON_TAPE.values(), ids=ON_TAPE)
def test_both_rates_occur(drill: Kind) -> None:
    rates = {drill.make(seed).key["session"]["rate"] for seed in range(20)}

    assert rates == {"29.97", "25"}


@EACH_KIND
def test_shown_holds_nothing_of_the_key(drill: Kind) -> None:
    for seed in SEEDS:
        question = drill.make(seed)
        written = json.dumps(question.shown)
        names = [f'"{name}":' for name in ("reveals", "wants", "right", "misconceptions")]

        assert set(question.shown) & set(question.key) == set()
        assert [name for name in names if name in written] == []


@EACH_KIND
def test_texts_are_whole_sentences_without_gaps(drill: Kind) -> None:
    for seed in SEEDS:
        question = drill.make(seed)
        answer = nth_answer(question, seed)
        feedback = drill.grade(question, answer).feedback
        words = [text for text in texts(question.shown) + texts(feedback) if " " in text]
        marks = ("  ", "{", "}", " .", " ,", "..", "'", " a a", "the the")

        assert [text for text in words if any(mark in text for mark in marks)] == []


@EACH_KIND
def test_questions_are_many(drill: Kind) -> None:
    shown = {
        hashlib.sha256(json.dumps(drill.make(seed).shown).encode()).digest() for seed in range(300)
    }

    assert len(shown) == 300


@EACH_KIND
def test_huge_seed_makes_a_question(drill: Kind) -> None:
    question = drill.make(2**53 - 1)

    verdict = drill.grade(question, right_answer(question))
    assert (verdict.right, verdict.pending) == (
        not drill.by_hand,
        drill.by_hand,
    )
