"""Whoever knows nothing of the work finds no order; `drills.test_cues` tries the rest."""

from collections.abc import Callable, Sequence

import pytest

from exercises.drills.kinds.put_in_order import KIND as PUT_IN_ORDER
from tests.exercises.drills.cues.table import MORE
from tests.exercises.drills.made import many
from tests.exercises.drills.skeletons import skeleton


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
    rule: Callable[[Sequence[str]], list[int]], step: int
) -> None:
    """Of any two steps; and all of it right next to never."""
    kept = []
    for seed, question in enumerate(many(PUT_IN_ORDER, 1_000)):
        options = question.asks[0].as_json()["steps"]
        texts = [skeleton(option["text"]) for option in options]
        order = [options[at]["value"] for at in rule(texts)][::step]
        rules_of = question.key["procedure"]["rules"]
        kept += [order.index(each["first"]) < order.index(each["then"]) for each in rules_of]
        kept_all = PUT_IN_ORDER.grade(question, {"order": order}).right
        assert not kept_all, seed

    assert sum(kept) / len(kept) <= 0.5 + MORE
