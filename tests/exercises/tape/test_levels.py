import pytest
from hypothesis import given
from hypothesis import strategies as st

from exercises.tape.levels import automatic_white, decibels, gained


@given(st.integers(0, 140), st.integers(-300, 300))
def test_gain_and_its_opposite_leave_the_level_as_it_was(white: int, gain: int) -> None:
    assert gained(gained(white, gain), -gain) == pytest.approx(white)


@given(st.integers(1, 140), st.integers(-300, 300))
def test_gain_is_told_back_in_decibels(white: int, gain: int) -> None:
    assert decibels(gained(white, gain) / white) == pytest.approx(gain, abs=1e-6)


@given(st.integers(51, 140))
def test_automatic_level_brings_white_within_reach_to_where_it_should_be(white: int) -> None:
    assert automatic_white(white) == 100


@given(st.integers(0, 50))
def test_automatic_level_lifts_by_6_db_and_no_more(white: int) -> None:
    assert automatic_white(white) == pytest.approx(white * 10**0.3)
