"""Whoever knows nothing of two machines answers no better than by chance, by whatever rule."""

from collections.abc import Callable

import pytest

from exercises.drills.kinds.can_this_bench import KIND as CAN_THIS_BENCH
from tests.exercises.drills.blind import Asked, asked, chance, right, rules, words_of
from tests.exercises.drills.skeletons import skeleton

SEEDS = range(1_000)
MORE = 0.05  # than by chance


@pytest.fixture(scope="module")
def questions() -> list[tuple[str, Asked]]:
    """Each with all that is read before its answers."""
    made = map(CAN_THIS_BENCH.make, SEEDS)
    return [
        (skeleton(" ".join(map(str, question.shown.values()))), each)
        for question in made
        for each in asked(question)
    ]


def test_no_blind_rule_is_much_better_than_chance(questions: list[tuple[str, Asked]]) -> None:
    those = [each for _, each in questions]
    found = {name: right(rule, those) for name, rule in rules(those).items()}
    best = dict(sorted(found.items(), key=lambda entry: -entry[1])[:5])

    assert max(best.values()) <= chance(those) + MORE, best


@pytest.mark.parametrize("pick", [max, min])
def test_words_of_the_story_do_not_tell(
    questions: list[tuple[str, Asked]], pick: Callable[[list[int]], int]
) -> None:
    """The answer that has most words in common with the story, or fewest."""
    shares = []
    for story, each in questions:
        common = [len(words_of(text) & words_of(story)) for text in each.texts]
        shares.append(each.share([at for at, n in enumerate(common) if n == pick(common)]))

    assert sum(shares) / len(shares) <= chance(each for _, each in questions) + MORE
