"""Turning the wrong way, or by a factor of two, is told from misjudging."""

import pytest

from exercises.drills.kinds.knobs.turn import remark


@pytest.mark.parametrize(
    ("position", "told"),
    [
        (10, "You turned it as far as was needed, but the other way."),
        (40, "You turned it twice as far as was needed."),
        (25, "You turned it half as far as was needed."),
        (33, ""),
    ],
)
def test_remark_names_the_error_of_turning(position: int, told: str) -> None:
    assert remark(20, 30, position) == told


def test_remark_is_silent_where_little_turning_was_needed() -> None:
    assert remark(20, 23, 17) == ""
