from math import hypot, inf

import pytest

from exercises.signal.meters.scale import PIVOT, STOP, Scale, in_words

SCALE = Scale()


def test_scale_runs_over_its_spread() -> None:
    assert [SCALE.angle(each) for each in (0, 10 ** (3 / 20))] == [-45, 45]


def test_needle_turns_in_proportion_to_the_voltage() -> None:
    angles = [SCALE.angle(each) + 45 for each in (0.25, 0.5, 1)]

    assert angles == pytest.approx([angles[2] / 4, angles[2] / 2, 90 * 0.7079], abs=0.02)


@pytest.mark.parametrize(("deflection", "way"), [(-1, 0), (5, STOP)])
def test_needle_stops_at_either_end(deflection: float, way: float) -> None:
    assert SCALE.angle(deflection) == pytest.approx((way - 0.5) * 90, abs=0.01)


def test_marks_are_those_of_the_standard_in_order() -> None:
    marks = SCALE.marks()

    labels = ["−20", "−10", "−7", "−5", "−3", "−2", "−1", "0", "+1", "+2", "+3"]
    assert [mark.label for mark in marks] == labels
    assert [mark.label for mark in marks if mark.loud] == ["0", "+1", "+2", "+3"]
    assert sorted(mark.inner.x for mark in marks) == [mark.inner.x for mark in marks]


def test_needle_ends_on_the_arc_at_its_mark() -> None:
    zero = next(mark for mark in SCALE.marks() if mark.label == "0")

    tip = SCALE.needle(1)

    assert tip == zero.inner
    assert hypot(tip.x - PIVOT.x, tip.y - PIVOT.y) == pytest.approx(SCALE.radius, abs=0.01)


@pytest.mark.parametrize(
    ("reading", "words"),
    [
        (-inf, "at rest"),
        (-201, "under −20 VU"),
        (-200, "−20 VU"),
        (-31, "−3 VU"),
        (-2, "0 VU"),
        (0, "0 VU"),
        (4, "+0.5 VU"),
        (32, "+3 VU"),
        (33, "over +3 VU, against the stop"),
    ],
)
def test_reading_in_words(reading: float, words: str) -> None:
    assert in_words(reading) == words
