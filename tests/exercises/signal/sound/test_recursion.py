import numpy as np
import pytest

from exercises.signal.sound.recursion import one_pole


@pytest.mark.parametrize("pole", [0, 0.01, 0.5, 0.999, 0.99 + 0.01j, -0.7j])
def test_recursion_is_the_one_worked_out_step_by_step(pole: complex) -> None:
    driven = np.random.Generator(np.random.PCG64(1)).standard_normal(10_000)
    expected, held = [], 0.5 + 0j
    for each in driven:
        held = pole * held + each
        expected.append(held)

    found, last = one_pole(driven, pole, 0.5)

    np.testing.assert_allclose(found, expected, rtol=0, atol=1e-9)
    assert last == found[-1]


def test_recursion_goes_on_from_where_it_stood() -> None:
    driven = np.random.Generator(np.random.PCG64(2)).standard_normal(9_000)
    whole, _ = one_pole(driven, 0.998)

    first, state = one_pole(driven[:4_321], 0.998)
    second, _ = one_pole(driven[4_321:], 0.998, state)

    np.testing.assert_allclose(np.concatenate((first, second)), whole, rtol=0, atol=1e-9)


def test_recursion_of_nothing_stays_where_it_stood() -> None:
    found, state = one_pole(np.empty(0), 0.9, 3)

    assert (len(found), state) == (0, 3)
