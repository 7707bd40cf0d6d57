"""Figures of care and safety against those published.

Sources: SMPTE RP 103-1995, Table 1; ISO 18923:2000, medium term; IASA-TC 05, 3.7; NIOSH Pocket
Guide 0359 (isopropyl alcohol). HSE INDG143's 25 and 16 kg: from memory.
"""

import re
from typing import Any

import pytest

from exercises.drills.care import CARE, people
from exercises.drills.care.climate import FASTEST, KEEPING, OPERATING, STORING
from exercises.drills.care.tapes import NEAREST
from exercises.drills.kind import Question

QUESTIONS = [CARE.make(seed) for seed in range(600)]


def asked(situation: str) -> list[Question]:
    found = [question for question in QUESTIONS if question.situation == situation]
    assert found != []
    return found


def right(question: Question) -> str:
    return question.asks[0].in_words(question.right["reply"])


def numbers(text: str) -> list[Any]:
    return [int(found.replace("−", "-")) for found in re.findall(r"−?\d+(?= °C| %| ppm)", text)]


def test_limits_are_those_of_the_tables() -> None:
    assert (OPERATING.warmth, OPERATING.damp) == ((17, 25), (30, 70))
    assert (STORING.warmth, STORING.damp) == ((15, 23), (40, 55))
    assert (KEEPING.warmth[1], KEEPING.damp) == (23, (20, 50))
    assert (FASTEST, NEAREST) == (10, 15)
    assert (people.SHIFT, people.SHORT) == (400, 500)


def test_cold_tape_warms_by_no_more_than_ten_degrees_an_hour() -> None:
    for question in asked("cold-tape"):
        cold, room = numbers(question.shown["story"])
        hours, minutes = (
            int((re.search(rf"(\d+) {unit}", right(question)) or [0, 0])[1])
            for unit in ("h", "min")
        )

        assert (room - cold) / (hours + minutes / 60) == pytest.approx(10)


def test_room_is_judged_by_the_operating_limits() -> None:
    for question in asked("edit-room"):
        warmth, damp = numbers(question.shown["story"])
        fits = 17 <= warmth <= 25 and 30 <= damp <= 70

        assert (right(question) == "Thread the tape and begin") is fits


@pytest.mark.parametrize(
    ("situation", "most", "damp"),
    [("some-years", 23, range(40, 56)), ("ten-years-or-more", 23, range(20, 51))],
)
def test_one_place_alone_is_fit_to_keep_a_tape(situation: str, most: int, damp: range) -> None:
    for question in asked(situation):
        ask = question.asks[0]
        fit = []
        for value in ask.every():
            degrees, percent = numbers(ask.in_words(value))
            if 15 <= degrees <= most and percent in damp:
                fit.append(value)

        assert fit == [question.right["reply"]]


def test_vapour_is_judged_by_the_limit_for_a_working_day() -> None:
    for question in asked("vapour"):
        (average,) = numbers(question.shown["story"])

        assert 400 < average < 500
        assert right(question).startswith("Too much for a working day")
