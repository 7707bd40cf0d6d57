"""Whoever knows nothing of care answers no better than by chance, whatever rule they go by."""

import pytest

from exercises.drills.kinds.care_and_safety import KIND as CARE
from tests.exercises.drills.blind import Asked, asked, by_word, chance, longest, right, rules

SEEDS = range(1_000)
MORE = 0.05  # than by chance


@pytest.fixture(scope="module")
def questions() -> list[Asked]:
    return [each for seed in SEEDS for each in asked(CARE.make(seed))]


def test_no_blind_rule_is_much_better_than_chance(questions: list[Asked]) -> None:
    found = {name: right(rule, questions) for name, rule in rules(questions).items()}
    best = dict(sorted(found.items(), key=lambda entry: -entry[1])[:5])

    assert max(best.values()) <= chance(questions) + MORE, best


TOLD = [
    Asked(("Leave it", "Pull it out at once", "Shake it", "Glue it"), 0, "stuck"),
    Asked(("Cut it off", "Burn", "Leave the whole of it here", "Wipe"), 2, "loop"),
]


def test_rule_that_tells_the_answer_would_be_found() -> None:
    assert right(by_word("leave", having=True), TOLD) == 1
    assert right(longest, TOLD) == 0.5
    assert chance(TOLD) == 0.25
