"""Item statistics against a published data set and other people's libraries.

The data: 1,000 people's answers to five questions, as counts of the 32 patterns, in R. D. Bock and
M. Lieberman, "Fitting a response model for n dichotomously scored items", Psychometrika 35 (1970),
179-197; the counts as reprinted in the output of the R package `ltm` (D. Rizopoulos, Journal of
Statistical Software 17(5), 2006). The coefficients of the five questions together, and with each
of them left out, are those that the tests of RKWard (KDE, `tests/item_response_theory/
Cronbach_alpha.rkout` and its earlier `RKTestStandard.Cronbach_alpha.rkout`) hold for these data
from `ltm`. For questions that are right or wrong, alpha is KR-20.
"""

from itertools import product
from random import Random

import numpy as np
import pytest
from scipy.stats import pointbiserialr

from exercises.mastery.items import discriminations, kr20

COUNTS = {
    "00000": 3, "00001": 6, "00010": 2, "00011": 11, "00100": 1, "00101": 1, "00110": 3,
    "00111": 4, "01000": 1, "01001": 8, "01011": 16, "01101": 3, "01110": 2, "01111": 15,
    "10000": 10, "10001": 29, "10010": 14, "10011": 81, "10100": 3, "10101": 28, "10110": 15,
    "10111": 80, "11000": 16, "11001": 56, "11010": 21, "11011": 173, "11100": 11, "11101": 61,
    "11110": 28, "11111": 298,
}  # fmt: skip
ROWS = [[mark == "1" for mark in marks] for marks, n in COUNTS.items() for _ in range(n)]
WHOLE = 0.295
WITHOUT = [0.28, 0.24, 0.22, 0.25, 0.27]

Rows = list[list[bool]]


def made_up(people: int, items: int) -> Rows:
    """People of different strength, items of different weight; the same every time."""
    draw = Random(items).random
    strengths = [draw() for _ in range(people)]
    return [[draw() < (s + (i + 1) / (items + 1)) / 2 for i in range(items)] for s in strengths]


TABLES = [ROWS, made_up(12, 6), made_up(30, 9), made_up(200, 20)]


def without(rows: Rows, item: int) -> Rows:
    return [row[:item] + row[item + 1 :] for row in rows]


def test_data_are_those_of_a_thousand_people() -> None:
    """Bock and Lieberman (1970): a thousand people, patterns of five answers."""
    assert (len(ROWS), len(set(COUNTS) & {"".join(p) for p in product("01", repeat=5)})) == (
        1000,
        len(COUNTS),
    )


def test_kr20_is_the_published_one() -> None:
    """RKWard's tests hold 0.295 for these data, worked out by `ltm`."""
    assert round(kr20(ROWS) or 0, 3) == WHOLE


def test_kr20_without_each_question_is_the_published_one() -> None:
    """RKWard's tests hold these for the data with one question left out, worked out by `ltm`."""
    assert [round(kr20(without(ROWS, item)) or 0, 2) for item in range(5)] == WITHOUT


@pytest.mark.parametrize("rows", TABLES, ids=["published", "12", "30", "200"])
def test_kr20_is_alpha_by_covariances_of_numpy(rows: Rows) -> None:
    """L. J. Cronbach, “Coefficient alpha and the internal structure of tests”, Psychometrika 16
    (1951), with numpy's covariances.
    """
    covariances = np.cov(np.array(rows, dtype=float), rowvar=False)
    count = len(covariances)
    alpha = count / (count - 1) * (1 - np.trace(covariances) / covariances.sum())

    assert kr20(rows) == pytest.approx(alpha)


@pytest.mark.parametrize("rows", TABLES, ids=["published", "12", "30", "200"])
def test_discrimination_is_the_point_biserial_of_scipy_with_the_rest(rows: Rows) -> None:
    """scipy.stats.pointbiserialr of each item with the sum of the others."""
    answers = {
        person: {str(item): right for item, right in enumerate(row)}
        for person, row in enumerate(rows)
    }
    ours = discriminations(answers)

    theirs = {
        str(item): pointbiserialr(
            [row[item] for row in rows], [sum(row) - row[item] for row in rows]
        ).statistic
        for item in range(len(rows[0]))
    }
    assert ours == {item: pytest.approx(found) for item, found in theirs.items()}
