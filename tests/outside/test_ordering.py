"""The score for an order against rank correlation, its steps to move against a longest run.

Sources: `scipy.stats.kendalltau` (M. G. Kendall, "A new measure of rank correlation", 1938);
the longest increasing run by patience sorting with the standard library's `bisect`.
"""

from bisect import bisect_left
from itertools import combinations, permutations

import pytest
from scipy.stats import kendalltau

from exercises.drills.judging.rules import RUN_UP
from exercises.drills.kinds.put_in_order.procedure import Before, Procedure

STEPS = "abcdef"
WHOLE = Procedure(
    name="total",
    task="Every step has its place.",
    steps={step: step.upper() for step in STEPS},
    rules=tuple(Before(a, b, "So it is.") for a, b in combinations(STEPS, 2)),
    flaws=(),
    rule=RUN_UP,
    decoys={},
)
ORDERS = [list(order) for order in permutations(STEPS)][::7]


def longest_run(numbers: list[int]) -> int:
    ends: list[int] = []
    for number in numbers:
        at = bisect_left(ends, number)
        ends[at : at + 1] = [number]
    return len(ends)


def test_rules_kept_are_the_concordant_pairs_of_kendall() -> None:
    """scipy.stats.kendalltau (M. G. Kendall, “A new measure of rank correlation”, Biometrika 30,
    1938).
    """
    for order in ORDERS:
        tau = kendalltau(range(len(STEPS)), [order.index(step) for step in STEPS]).statistic
        kept = len(WHOLE.rules) - len(WHOLE.broken(order))

        assert kept / len(WHOLE.rules) == pytest.approx((tau + 1) / 2)


def test_steps_to_move_are_those_outside_a_longest_increasing_run() -> None:
    """The longest increasing run by patience sorting with the standard library's bisect (derived
    here).
    """
    for order in ORDERS:
        numbers = [STEPS.index(step) for step in order]

        assert len(WHOLE.out_of_place(order)) == len(STEPS) - longest_run(numbers)
