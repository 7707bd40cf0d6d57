"""The numbers beneath a tape map: legible where faults begin at one spot, each there once."""

import doctest
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from exercises.templatetags import tape
from exercises.templatetags.tape import A_FIGURE, fault_numbers

PLACES = st.lists(st.floats(0, 100)).map(sorted)


def test_example_is_true() -> None:
    assert doctest.testmod(tape).failed == 0


@given(PLACES)
def test_every_fault_has_its_number_once_and_in_order(lefts: list[float]) -> None:
    told = ", ".join(filter(None, fault_numbers(lefts)))

    assert told == ", ".join(str(number) for number in range(1, len(lefts) + 1))


@given(PLACES)
def test_no_number_is_written_over_another(lefts: list[float]) -> None:
    written = [(left, text) for left, text in zip(lefts, fault_numbers(lefts), strict=True) if text]

    for (left, text), (following, _) in pairwise(written):
        assert left + A_FIGURE * len(text) <= following
