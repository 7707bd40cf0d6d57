"""Figures that lessons tell, against values from outside the project."""

import pytest

from course.lessons.adjusted import skew_step, spacing_loss, tracking_loss
from course.lessons.figures import chain_snr, noise_grade, pulse_spacing, stripe_width
from course.lessons.lesson import Lesson
from course.lessons.levelled import bar_level, usual_bars, vu_burst
from course.lessons.shelf import shelf


@pytest.fixture
def lesson() -> Lesson:
    found = shelf().find("what-an-edit-is")
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("chain", "decibels"),
    [
        # 46 dB falls to 42.99, 41.23, 39.98 and 39.01 dB.
        ([46, 46], 42.99),
        ([46, 46, 46], 41.23),
        ([46] * 4, 39.98),
        ([46] * 5, 39.01),
        # Unequal recordings add noise powers: 46 and 43 dB make 41.24 dB.
        ([46, 43], 41.24),
    ],
)
def test_noise_through_copies(lesson: Lesson, chain: list[float], decibels: float) -> None:
    """Derived here: noise powers add; n equal recordings cost 10 log10 n dB."""
    told = float(chain_snr(lesson, chain=chain))

    assert told == pytest.approx(decibels, abs=0.05)


@pytest.mark.parametrize(
    ("grade", "decibels"),
    [(5, 45.5), (4, 36.6), (3, 29.9), (2, 25.4), (1, 23.1)],
)
def test_noise_at_a_grade(lesson: Lesson, grade: int, decibels: float) -> None:
    """A “CATV image quality subjective evaluation table” prints the CCIR formula for weighted
    noise, S/N = 23 - Q + 1.1 Q², and its values at the five grades of ITU-R BT.500.
    """
    told = float(noise_grade(lesson, grade=grade))

    assert told == pytest.approx(decibels, abs=0.05)


def test_distance_between_pulses(lesson: Lesson) -> None:
    """IEC 60774-1, 625 lines: 23.39 mm/s, so 0.9356 mm of tape a frame."""
    told = float(pulse_spacing(lesson, millimetres_a_second=23.39, rate="25"))

    assert told == pytest.approx(0.9356, abs=0.005)


def test_width_of_a_stripe(lesson: Lesson) -> None:
    """IEC 60774-1, 625 lines: 5° 57' 50.3" and 23.39 mm/s; a track pitch of 49 µm."""
    angle = 5 + 57 / 60 + 50.3 / 3600
    told = float(stripe_width(lesson, millimetres_a_second=23.39, degrees=angle, rate="25"))

    assert told == pytest.approx(0.049, abs=0.005)


@pytest.mark.parametrize("words", ["imperceptible", "perceptible, but not annoying"])
def test_words_for_noise_are_those_of_the_recommendation(lesson: Lesson, words: str) -> None:
    """ITU-R BT.500, five-grade impairment scale: grades 5 and 4."""
    assert words in lesson.text()


@pytest.mark.parametrize(
    ("percent", "decibels"),
    [(10, 0.92), (25, 2.5), (50, 6.02), (75, 12.04), (90, 20)],
)
def test_loss_by_tracking(lesson: Lesson, percent: int, decibels: float) -> None:
    """From memory: a head as wide as its track, off by a part x of it, loses 20 log10(1 - x)."""
    told = float(str(tracking_loss(lesson, percent=percent)).removesuffix(" dB"))

    assert told == pytest.approx(decibels, abs=0.05)


@pytest.mark.parametrize(
    ("lines", "microseconds"),
    [(525, 1.67), (625, 2.0)],
)
def test_step_by_skew(lesson: Lesson, lines: int, microseconds: float) -> None:
    """Derived here: strain times the field period of SMPTE 170M and ITU-R BT.1700; 1e-4 makes
    1.67 and 2.0 µs.
    """
    told = float(str(skew_step(lesson, parts=10_000, lines=lines)).removesuffix(" µs"))

    assert told == pytest.approx(microseconds, abs=0.05)


@pytest.mark.parametrize(
    ("micrometres", "decibels"),
    [(0.48, 20), (1, 41)],
)
def test_loss_by_spacing(lesson: Lesson, micrometres: float, decibels: int) -> None:
    """From memory: Wallace's 54.6 dB a wavelength (1951), at a wavelength of 1.32 µm."""
    told = spacing_loss(lesson, micrometres=micrometres, speed=5.8, megahertz=4.4)

    assert told == f"{decibels} dB"


@pytest.mark.parametrize(
    ("bar", "ire"),
    [("white", 76.9), ("yellow", 69.0), ("green", 48.2), ("blue", 15.4), ("black", 7.5)],
)
def test_level_of_a_bar_at_525_lines(lesson: Lesson, bar: str, ire: float) -> None:
    """75/7.5/75/7.5 of SMPTE EG 1, luma of ITU-R BT.601, 7.5 IRE of setup: 7.5 + 92.5 Y'."""
    assert bar_level(lesson, bars="bars", bar=bar, lines=525) == f"{ire} IRE"


@pytest.mark.parametrize(("bars", "millivolts"), [("bars-100", 700), ("bars", 525)])
def test_level_of_a_white_bar_at_625_lines(lesson: Lesson, bars: str, millivolts: int) -> None:
    """100/0/75/0 and 75/0/75/0: 1.00 and 0.75 (EBU D 23) of 700 mV (ITU-R BT.1700)."""
    assert bar_level(lesson, bars=bars, bar="white", lines=625) == f"{millivolts} mV"


def test_bars_that_are_usual(lesson: Lesson) -> None:
    """By the four levels of ITU-R BT.471; 525 lines: SMPTE EG 1; 625 lines: common practice."""
    assert usual_bars(lesson, lines=525) == "75/7.5/75/7.5"
    assert usual_bars(lesson, lines=625) == "100/0/75/0"


@pytest.mark.parametrize(
    ("milliseconds", "decibels"),
    [(10, 25), (25, 17), (50, 11), (300, 0)],
)
def test_short_sound_on_a_vu_meter(lesson: Lesson, milliseconds: int, decibels: int) -> None:
    """Derived here from IEC 60268-17: a second-order system with 1.25 % of overshoot reads
    bursts of 10, 25, 50 and 300 ms 24.9, 17.0, 11.1 and 0.08 dB low.
    """
    assert vu_burst(lesson, milliseconds=milliseconds) == decibels
