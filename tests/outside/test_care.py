"""Figures of care and safety against those published.

Sources: SMPTE RP 103-1995, Table 1; IASA-TC 05, 3.7; NIOSH Pocket Guide 0359 (isopropyl
alcohol). A limit of 200 ppm in some countries: from memory.
"""

import re

import pytest

from exercises.drills.asks import Choice
from exercises.drills.kinds.care_and_safety import KIND as CARE
from exercises.drills.kinds.care_and_safety import limits
from exercises.drills.kinds.care_and_safety.limits import KEEPING, OPERATING, STORING
from exercises.drills.question import Question
from tests.exercises.drills.made import many


def asked(situation: str) -> list[Question]:
    found = [question for question in many(CARE, 1_500) if question.situation == situation]
    assert found != []
    return found


def texts(question: Question) -> dict[str, str]:
    ask = question.asks[0]
    assert isinstance(ask, Choice)
    return {option.value: option.text for option in ask.options}


def right(question: Question) -> str:
    return texts(question)[question.right["reply"]]


def numbers(text: str) -> list[int]:
    return [int(found.replace("−", "-")) for found in re.findall(r"−?\d+(?= °C| %| ppm)", text)]


def test_limits_are_those_of_the_tables() -> None:
    """SMPTE RP 103-1995, Table 1; IASA-TC 05, 3.7; NIOSH Pocket Guide 0359; 200 ppm in some
    countries from memory. Beyond ten years 17 °C and 30 %, at most 2 °C and 5 % away from
    them.
    """
    assert (OPERATING.warmth, OPERATING.damp) == ((17, 25), (30, 70))
    assert (STORING.warmth, STORING.damp) == ((15, 23), (40, 55))
    # Beyond ten years 17 °C and 30 %, at most 2 °C and 5 % away from them.
    assert (KEEPING.warmth, KEEPING.damp) == ((17 - 2, 17 + 2), (30 - 5, 30 + 5))
    assert (limits.FASTEST, limits.NEAREST) == (10, 15)
    assert (limits.SHIFT, limits.SHORT, limits.LOWER) == (400, 500, 200)


ROOMS = {
    "a-suitable-room": "Yes",
    "a-warm-room": "Not yet: the room is too warm",
    "a-cold-room": "Not yet: the room is too cold",
    "a-damp-room": "Not yet: the air is too damp",
}


@pytest.mark.parametrize(("situation", "answer"), ROOMS.items())
def test_room_is_judged_by_the_operating_limits(situation: str, answer: str) -> None:
    """SMPTE RP 103-1995, Table 1: in use, 17 to 25 °C and 30 to 70 %."""
    for question in asked(situation):
        warmth, damp = numbers(question.shown["story"])
        fits = 17 <= warmth <= 25 and 30 <= damp <= 70

        assert right(question).startswith(answer)
        assert fits is (answer == "Yes")


@pytest.mark.parametrize(
    ("situation", "warmth", "damp"),
    [
        ("some-years", range(15, 24), range(40, 56)),
        ("longer-than-ten-years", range(15, 20), range(25, 36)),
    ],
)
def test_one_place_alone_is_fit_to_keep_a_tape(situation: str, warmth: range, damp: range) -> None:
    """SMPTE RP 103-1995, Table 1: up to ten years, and beyond them."""
    for question in asked(situation):
        fit = []
        for value, text in texts(question).items():
            degrees, percent = numbers(text)
            if degrees in warmth and percent in damp:
                fit.append(value)

        assert fit == [question.right["reply"]]


def test_sum_of_minutes_is_no_answer_to_how_long_a_tape_warms() -> None:
    """SMPTE RP 103-1995, Table 1: 10 °C an hour is how fast the surroundings may change. From
    frost it may take about 16 hours (a navy manual on photography).
    """
    for question in asked("minutes-worked-out"):
        assert right(question).startswith("Nothing")
        assert "16 hours" in question.key["source"]


def test_distance_from_magnets_is_the_published_one() -> None:
    """IASA-TC 05, 3.7: 15 cm from headphones, microphones, loudspeakers and needle meters."""
    assert all(right(each).startswith("15 cm") for each in asked("headphones-on-the-table"))
