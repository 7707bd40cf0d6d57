"""Figures that lessons tell, against values from outside the project."""

import pytest

from course.lessons.figures import chain_snr, noise_grade, pulse_spacing, stripe_width
from course.lessons.lesson import Lesson
from course.lessons.shelf import shelf


@pytest.fixture
def lesson() -> Lesson:
    found = shelf().find("what-an-edit-is")
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("chain", "decibels"),
    [
        # n equal recordings cost 10 log10 n dB, "3 dB for each doubling of the number of
        # copies": 46 dB falls to 42.99, 41.23, 39.98 and 39.01 dB.
        ([46, 46], 42.99),
        ([46, 46, 46], 41.23),
        ([46] * 4, 39.98),
        ([46] * 5, 39.01),
        # Unequal recordings add noise powers: 46 and 43 dB make 41.24 dB.
        ([46, 43], 41.24),
    ],
)
def test_noise_through_copies(lesson: Lesson, chain: list[float], decibels: float) -> None:
    told = float(chain_snr(lesson, chain=chain))

    assert told == pytest.approx(decibels, abs=0.05)


@pytest.mark.parametrize(
    ("grade", "decibels"),
    # CCIR formula S/N = 23 - Q + 1.1 Q², weighted noise, for the five grades of ITU-R BT.500:
    # the table of a published subjective evaluation.
    [(5, 45.5), (4, 36.6), (3, 29.9), (2, 25.4), (1, 23.1)],
)
def test_noise_at_a_grade(lesson: Lesson, grade: int, decibels: float) -> None:
    told = float(noise_grade(lesson, grade=grade))

    assert told == pytest.approx(decibels, abs=0.05)


def test_distance_between_pulses(lesson: Lesson) -> None:
    # IEC 60774-1, 625 lines: 23.39 mm/s, so 0.9356 mm of tape a frame.
    told = float(pulse_spacing(lesson, millimetres_a_second=23.39, rate="25"))

    assert told == pytest.approx(0.9356, abs=0.005)


def test_width_of_a_stripe(lesson: Lesson) -> None:
    # IEC 60774-1, 625 lines: 5° 57' 50.3" and 23.39 mm/s, a published track pitch of 49 µm.
    angle = 5 + 57 / 60 + 50.3 / 3600
    told = float(stripe_width(lesson, millimetres_a_second=23.39, degrees=angle, rate="25"))

    assert told == pytest.approx(0.049, abs=0.005)


@pytest.mark.parametrize("words", ["imperceptible", "perceptible, but not annoying"])
def test_words_for_noise_are_those_of_the_recommendation(lesson: Lesson, words: str) -> None:
    # ITU-R BT.500, five-grade impairment scale: grades 5 and 4.
    assert words in lesson.text()
