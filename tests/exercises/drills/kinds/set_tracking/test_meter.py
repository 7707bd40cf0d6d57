"""Meters that mislead: stuck, or with a second and lower peak; never merely beside the picture."""

from itertools import islice

import pytest

from exercises.drills.question import Question
from exercises.drills.register import KINDS
from tests.exercises.drills.made import made

TRACKING = KINDS["set-tracking"]


def of(situation: str) -> list[Question]:
    found = (made(TRACKING, seed) for seed in range(400))
    return list(islice((each for each in found if each.situation == situation), 8))


def peaks(readings: list[int]) -> list[int]:
    """Positions that read higher than both of their neighbours."""
    inside = range(1, len(readings) - 1)
    return [at for at in inside if readings[at - 1] < readings[at] > readings[at + 1]]


@pytest.mark.parametrize("situation", ["by-the-meter", "another-tapes-mark"])
def test_true_meter_has_one_peak_where_the_control_belongs(situation: str) -> None:
    for question in of(situation):
        assert peaks(question.shown["readings"]) == [question.right["tracking"]]


def test_stuck_needle_never_moves() -> None:
    for question in of("stuck-meter"):
        assert len(set(question.shown["readings"])) == 1


def test_second_peak_is_lower_and_far_from_where_the_control_belongs() -> None:
    for question in of("second-peak"):
        readings, best = question.shown["readings"], question.right["tracking"]
        (other,) = [at for at in peaks(readings) if at != best]

        assert best in peaks(readings)
        assert readings[other] < 0.7 * readings[best]
        assert abs(other - best) >= 15


def test_whoever_trusts_the_meter_stays_where_it_leads() -> None:
    for question in of("second-peak"):
        readings, best = question.shown["readings"], question.right["tracking"]
        (other,) = [at for at in peaks(readings) if at != best]

        verdict = TRACKING.grade(question, {"tracking": other})

        assert (verdict.right, verdict.misconceptions) == (False, ("meter-beats-picture",))
