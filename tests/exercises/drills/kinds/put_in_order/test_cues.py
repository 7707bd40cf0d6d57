"""Whoever knows nothing of the work finds no step that does not belong, and no order."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

import pytest

from exercises.drills.kind import Question
from exercises.drills.kinds.put_in_order import KIND as PUT_IN_ORDER
from tests.exercises.drills.blind import Asked, chance, right, rules
from tests.exercises.drills.skeletons import skeleton

SEEDS = range(1_000)
MORE = 0.05  # than by chance
SELDOM = 0.01


@dataclass(frozen=True)
class Steps(Asked):
    """The steps as they stand; a rule is right that picks one of those that do not belong."""

    decoys: frozenset[int] = field(default=frozenset())

    def share(self, picked: Sequence[int]) -> float:
        among = picked or range(len(self.texts))
        return sum(at in self.decoys for at in among) / len(among)


def steps(question: Question) -> Steps:
    options = question.asks[0].as_json()["steps"]
    kept = question.right["order"]
    return Steps(
        texts=tuple(skeleton(each["text"]) for each in options),
        right=-1,
        situation=question.situation,
        decoys=frozenset(at for at, each in enumerate(options) if each["value"] not in kept),
    )


@pytest.fixture(scope="module")
def questions() -> list[Question]:
    return [PUT_IN_ORDER.make(seed) for seed in SEEDS]


def test_no_blind_rule_finds_what_does_not_belong(questions: list[Question]) -> None:
    asked = [steps(question) for question in questions]
    found = {name: right(rule, asked) for name, rule in rules(asked).items()}
    best = dict(sorted(found.items(), key=lambda entry: -entry[1])[:5])

    assert max(best.values()) <= chance(asked) + MORE, best


def by_length(texts: Sequence[str]) -> list[int]:
    return sorted(range(len(texts)), key=lambda at: len(texts[at]))


def by_letter(texts: Sequence[str]) -> list[int]:
    return sorted(range(len(texts)), key=lambda at: texts[at])


def as_shown(texts: Sequence[str]) -> list[int]:
    return list(range(len(texts)))


ORDERS = (by_length, by_letter, as_shown)


@pytest.mark.parametrize("rule", ORDERS, ids=lambda rule: rule.__name__)
@pytest.mark.parametrize("step", [1, -1])
def test_no_blind_rule_tells_which_step_comes_first(
    questions: list[Question], rule: Callable[[Sequence[str]], list[int]], step: int
) -> None:
    """Of any two steps; and all of it right next to never."""
    kept = []
    for question in questions:
        options = question.asks[0].as_json()["steps"]
        order = [options[at]["value"] for at in rule(steps(question).texts)][::step]
        rules_of = question.key["procedure"]["rules"]
        kept += [order.index(each["first"]) < order.index(each["then"]) for each in rules_of]
        kept_all = PUT_IN_ORDER.grade(question, {"order": order}).right
        assert not kept_all

    assert sum(kept) / len(kept) <= 0.5 + MORE
