"""The ends of a looped line against the arithmetic of resistors.

Derived here from the definition of a voltage divider and of the decibel; that a line ends in 75 Ω
once, and only once: a textbook of 1989 on signal distribution (ubc.ca).
"""

from math import log10

import pytest

from exercises.tape.levels import gained, looped

SOURCE = END = 75  # Ω


def divided(ends: int) -> float:
    """The share of the source’s voltage over so many ends side by side."""
    if not ends:
        return 1
    side_by_side = 1 / sum(1 / END for _ in range(ends))
    return side_by_side / (SOURCE + side_by_side)


@pytest.mark.parametrize("ends", [0, 1, 2, 3])
def test_level_of_a_line_with_so_many_ends(ends: int) -> None:
    """Derived here: a voltage divider of resistors side by side."""
    decibels = 20 * log10(divided(ends) / divided(1))

    assert looped(ends) / 10 == pytest.approx(decibels)


def test_line_without_an_end_has_twice_the_level_and_one_with_two_ends_two_thirds() -> None:
    """Derived here: about +6 dB and -3.5 dB. That a line ends once is a textbook of 1989
    (ubc.ca).
    """
    assert [looped(0) / 10, looped(2) / 10] == pytest.approx([6.02, -3.52], abs=0.01)
    assert gained(700, looped(0)) == pytest.approx(1400)
    assert gained(700, looped(2)) == pytest.approx(466.7, abs=0.1)
