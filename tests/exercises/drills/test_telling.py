"""What a question tells of whoever answers it, for every kind."""

from random import Random

import pytest

from exercises.drills.beliefs.telling_apart import subsets
from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.drills.register import KINDS

SEEDS = range(25)
JUDGED = {slug: kind for slug, kind in KINDS.items() if not kind.by_hand}
each_kind = pytest.mark.parametrize("kind", JUDGED.values(), ids=JUDGED)


@each_kind
def test_right_answer_is_of_somebody_without_the_beliefs(kind: Kind) -> None:
    for question in map(kind.make, SEEDS):
        tells = kind.tells(question)

        assert tells.is_one(question.right, ())
        assert tells.answers(()) == [question.right]
        assert all(
            kind.grade(question, answer).right is tells.is_one(answer, ())
            for answer in tried(question)
        )


@each_kind
def test_beliefs_lead_to_answers_that_are_wrong_and_are_theirs(kind: Kind) -> None:
    for question in map(kind.make, SEEDS):
        tells = kind.tells(question)
        for held in subsets(tells.beliefs[:3]):
            for answer in tells.answers(held):
                assert tells.is_one(answer, held)
                assert kind.grade(question, answer).right is not bool(held)


@each_kind
def test_chance_is_that_of_a_blind_guess(kind: Kind) -> None:
    """Compared with 4,000 guesses, where the answers can be counted."""
    question = kind.make(1)
    chance, draw = kind.tells(question).chance, Random(2)
    countable = all(0 < ask.count() <= len(ask.every()) for ask in question.asks)

    assert 0 <= chance < 1
    if countable:
        guessed = [
            {ask.name: draw.choice(ask.every()) for ask in question.asks} for _ in range(4000)
        ]
        tells = kind.tells(question)
        rights = sum(tells.is_one(answer, ()) for answer in guessed) / len(guessed)
        assert rights == pytest.approx(chance, abs=0.03)


def test_nobody_guesses_what_is_typed() -> None:
    kind = KINDS["sums-on-the-clock"]

    assert {kind.tells(kind.make(seed)).chance for seed in SEEDS} == {0.0}


def test_orders_with_the_same_mistakes_come_to_the_same() -> None:
    kind = KINDS["put-in-order"]
    question = next(q for q in map(kind.make, SEEDS) if kind.tells(q).beliefs)
    (belief, *_) = kind.tells(question).beliefs
    (order,) = kind.tells(question).answers([belief])

    assert kind.tells(question).is_one(order, [belief])
    assert not kind.tells(question).is_one(order, ())


def tried(question: Question) -> list[dict[str, object]]:
    """Every answer of the ask with fewest, the others right."""
    ask = min(question.asks, key=lambda each: len(each.every()))
    return [{**question.right, ask.name: value} for value in ask.every()]
