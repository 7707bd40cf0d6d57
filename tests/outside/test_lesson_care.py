"""What lessons tell of air, magnets, solvents and levels, against published values."""

import pytest

from course.lessons.lesson import Lesson
from course.lessons.levelled import automatic_white_of, white_after
from course.lessons.shelf import shelf


@pytest.fixture
def lesson() -> Lesson:
    return told_by("finishing")


def told_by(slug: str) -> Lesson:
    found = shelf().find(slug)
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("slug", "words"),
    [
        # SMPTE RP 103-1995, Table 1: in use, up to ten years, beyond ten years.
        ("finishing", "played at 17 to 25 °C and 30 to 70 % relative humidity"),
        ("finishing", "stored at 15 to 23 °C and 40 to 55 %"),
        ("finishing", "longer than that 17 °C and 30 % are best: 15 to 19 °C, and 25 to 35 %"),
        # SMPTE RP 103-1995, Table 1: at most 10 °C an hour, in use and shipping.
        ("finishing", "no faster than 10 °C an hour"),
        # IASA-TC 05, 3.7: 15 cm from microphones, headphones, loudspeakers and meters.
        ("finishing", "15 cm at least"),
        # NIOSH Pocket Guide 0359: 400 ppm (TWA), 500 ppm (STEL), flash point 53 °F, 11.7 °C.
        ("setting-up-the-recorder", "400 ppm over a working day"),
        ("setting-up-the-recorder", "500 ppm over 15 minutes"),
        # Limits differ by country: 200 ppm in some (from memory).
        ("setting-up-the-recorder", "others 200 ppm over a day"),
        ("setting-up-the-recorder", "catches fire from about 12 °C"),
    ],
)
def test_limit_is_the_published_one(slug: str, words: str) -> None:
    """SMPTE RP 103-1995, Table 1; IASA-TC 05, 3.7; NIOSH Pocket Guide 0359; each beside its
    words.
    """
    assert words in told_by(slug).text()


def test_time_to_warm_is_told_in_no_minutes(lesson: Lesson) -> None:
    """SMPTE RP 103-1995 limits how fast the surroundings change; from frost a tape may take
    about 16 hours (a navy manual on photography). A night in its case: common practice.
    """
    (text,) = (each for each in lesson.texts() if "draws dew" in each)

    assert "several hours, best overnight" in text
    assert "16 hours" in text
    assert " min" not in text.replace(" minutes", "")


@pytest.mark.parametrize(
    ("decibels", "white"),
    # 20 log10 of a ratio of voltages: half is -6.02 dB, a quarter -12.04, a tenth -20.
    [(-6, "50 IRE"), (-12, "25 IRE"), (-20, "10 IRE")],
)
def test_white_falls_by_decibels_of_voltage(lesson: Lesson, decibels: int, white: str) -> None:
    """Derived here: 20 log10 of a ratio of voltages."""
    assert white_after(lesson, white=100, decibels=decibels) == white


def test_automatic_level_doubles_at_most(lesson: Lesson) -> None:
    """6 dB is common practice; derived here: twice the voltage."""
    assert automatic_white_of(lesson, white=30) == "60 IRE"
