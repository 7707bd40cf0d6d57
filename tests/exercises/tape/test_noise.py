from math import inf
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from exercises.tape.noise import chain_snr, equal_copies_snr, grade_snr, noise_grade

snrs = st.lists(st.floats(10, 90), min_size=1, max_size=10)


@given(snrs, st.randoms(use_true_random=False))
def test_order_of_the_chain_does_not_matter(chain: list[float], random: Random) -> None:
    turned = list(chain)
    random.shuffle(turned)

    assert chain_snr(turned) == pytest.approx(chain_snr(chain))


@given(snrs, st.floats(10, 90))
def test_another_copy_never_helps(chain: list[float], further: float) -> None:
    assert chain_snr([*chain, further]) < min(*chain, further) + 1e-9
    assert chain_snr([*chain, further]) < chain_snr(chain)


@given(st.floats(10, 90), st.integers(1, 30))
def test_equal_copies_are_a_chain_of_equals(snr: float, copies: int) -> None:
    assert equal_copies_snr(snr, copies) == pytest.approx(chain_snr([snr] * copies))


def test_no_recording_has_no_noise() -> None:
    assert chain_snr([]) == inf


@given(st.floats(1, 5))
def test_grade_and_noise_are_one_formula_turned_round(grade: float) -> None:
    assert noise_grade(grade_snr(grade)) == pytest.approx(grade)


def test_grades_end_at_one_and_five() -> None:
    assert (noise_grade(-20), noise_grade(22), noise_grade(60)) == (1, 1, 5)
