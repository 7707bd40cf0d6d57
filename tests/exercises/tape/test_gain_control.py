import pytest
from hypothesis import given
from hypothesis import strategies as st

from exercises.tape import AutomaticGain, Limiter

levels = st.integers(-900, 200)


@given(levels, levels, st.integers(-600, 200), st.integers(1, 100))
def test_limiter_never_lifts_and_keeps_the_order(
    soft: int, loud: int, threshold: int, ratio: int
) -> None:
    limiter = Limiter(threshold, ratio)
    soft, loud = sorted((soft, loud))

    assert limiter.out(soft) <= soft
    assert limiter.out(soft) <= limiter.out(loud) + 1e-9
    assert limiter.out(threshold) == threshold


@given(levels, st.integers(-200, 200), st.integers(0, 5000), st.integers(0, 5000))
def test_gain_after_two_stretches_is_the_gain_after_both(
    level: int, gain: int, first: int, second: int
) -> None:
    gains = AutomaticGain()

    halfway = gains.after(first, gain=gain, level=level)

    assert gains.after(second, gain=halfway, level=level) == pytest.approx(
        gains.after(first + second, gain=gain, level=level), abs=1e-6
    )


@given(levels, st.integers(0, 600))
def test_gain_at_rest_stays_within_its_reach(level: int, most: int) -> None:
    gains = AutomaticGain(target=-10, most=most)
    rest = gains.settled(level)

    assert abs(rest) <= most
    assert gains.after(100_000, gain=0, level=level) == pytest.approx(rest, abs=1e-6)
    assert level + rest == -10 or abs(rest) == most


def test_attack_is_for_louder_and_release_for_softer() -> None:
    gains = AutomaticGain(attack=1, release=1_000_000)

    assert gains.after(20, gain=200, level=0) == pytest.approx(0, abs=1e-3)
    assert gains.after(20, gain=0, level=-900) == pytest.approx(0, abs=0.01)
