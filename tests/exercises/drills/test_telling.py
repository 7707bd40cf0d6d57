"""What a question tells of whoever answers it, for every kind."""

from random import Random

import pytest

from exercises.drills.beliefs.telling_apart import subsets
from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.drills.register import KINDS
from tests.exercises.drills.each import EACH_JUDGED
from tests.exercises.drills.made import made, many

SEEDS = range(12)


@EACH_JUDGED
def test_right_answer_is_of_somebody_without_the_beliefs(drill: Kind) -> None:
    for seed in SEEDS:
        question = made(drill, seed)
        tells = drill.tells(question)

        assert tells.is_one(question.right, ()), seed
        assert tells.answers(()) == [question.right], seed
        assert all(
            drill.grade(question, answer).right is tells.is_one(answer, ())
            for answer in tried(question)
        ), seed


@EACH_JUDGED
def test_beliefs_lead_to_answers_that_are_wrong_and_are_theirs(drill: Kind) -> None:
    for seed in SEEDS:
        question = made(drill, seed)
        tells = drill.tells(question)
        for held in subsets(tells.beliefs[:3]):
            for answer in tells.answers(held):
                assert tells.is_one(answer, held), (seed, held)
                assert drill.grade(question, answer).right is not bool(held), (seed, held)


@EACH_JUDGED
def test_chance_is_that_of_a_blind_guess(drill: Kind) -> None:
    """Compared with 4,000 guesses, where the answers can be counted."""
    question = made(drill, 1)
    tells, draw = drill.tells(question), Random(2)
    countable = all(0 < ask.count() <= len(ask.every()) for ask in question.asks)

    assert 0 <= tells.chance < 1
    if countable:
        guessed = [
            {ask.name: draw.choice(ask.every()) for ask in question.asks} for _ in range(4000)
        ]
        rights = sum(tells.is_one(answer, ()) for answer in guessed) / len(guessed)
        assert rights == pytest.approx(tells.chance, abs=0.03)


def test_nobody_guesses_what_is_typed() -> None:
    kind = KINDS["sums-on-the-clock"]

    assert {kind.tells(made(kind, seed)).chance for seed in SEEDS} == {0.0}


def test_orders_with_the_same_mistakes_come_to_the_same() -> None:
    kind = KINDS["put-in-order"]
    question = next(q for q in many(kind, len(SEEDS)) if kind.tells(q).beliefs)
    (belief, *_) = kind.tells(question).beliefs
    (order,) = kind.tells(question).answers([belief])

    assert kind.tells(question).is_one(order, [belief])
    assert not kind.tells(question).is_one(order, ())


def tried(question: Question) -> list[dict[str, object]]:
    """Every answer of the ask with fewest, the others right."""
    ask = min(question.asks, key=lambda each: len(each.every()))
    return [{**question.right, ask.name: value} for value in ask.every()]
