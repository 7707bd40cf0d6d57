"""Checks of claims about drawings, pictures and sounds."""

from typing import Any

import pytest

from course.lessons.claims import CHECKS
from course.lessons.lesson import Lesson
from tests.course.lessons.blocks.gallery import GALLERY
from tests.course.lessons.sample import read_sample


@pytest.fixture(scope="module")
def lesson(tmp_path_factory: pytest.TempPathFactory) -> Lesson:
    automatic = 'out = 450, at = 250, sound_level = { mode = "automatic" } }]'
    text = GALLERY.replace("out = 450, at = 250 }]", automatic).replace("end = 300", "end = 390")
    return read_sample(tmp_path_factory.mktemp("lessons"), text)


BELL = {"edit_course": "bell"}


@pytest.mark.parametrize(
    ("check", "given", "answer"),
    [
        # Two recordings alike: 10 log 2 = 3.01 dB; four: 6.02 dB.
        ("copies-cost", {"copies": 2}, "3 dB"),
        ("copies-cost", {"copies": 4}, "6 dB"),
        (
            "figure-says",
            {"block": "picture", "name": "one", "sentence": "There are no white streaks."},
            True,
        ),
        ("figure-says", {"block": "levels", "name": "speech", "sentence": "At 1 VU"}, False),
        # Set-up at 525 lines (SMPTE 170M), none at 625 (ITU-R BT.1700).
        ("scale-place", {"place": "black", "rate": "29.97"}, "7.5 IRE"),
        ("scale-place", {"place": "black", "rate": "25"}, "0 IRE"),
        ("level-drawn", {"levels": "speech", "name": "ordinary speech"}, "−10 to 0 VU"),
        ("course-lasts", {**BELL, "part": "pre_roll"}, "5 seconds"),
        ("course-lasts", {**BELL, "part": "unsettled"}, "2 seconds"),
        ("course-run-up", {**BELL, "tape": "master"}, "10 seconds"),
        ("course-locked", {**BELL, "tape": "master"}, "0 seconds"),
        ("course-locked", {**BELL, "tape": "source"}, "too late"),
        ("course-code", {**BELL, "tape": "source", "point": "start"}, "00:00:15:00"),
        ("course-code", {**BELL, "tape": "master", "point": "edit out"}, "00:00:16:00"),
        ("sound-words", {"sound": "said"}, "Nobody hurries a bridge."),
        # +45 and −125 ms (ITU-R BT.1359-1): 1.1 and 3.1 frames at 25; 1.3 and 3.7 at 29.97.
        ("lip-sync-noticed", {"frames": 1, "rate": "25", "sound": "early"}, False),
        ("lip-sync-noticed", {"frames": 2, "rate": "25", "sound": "early"}, True),
        ("lip-sync-noticed", {"frames": 4, "rate": "29.97", "sound": "late"}, True),
        ("frames-unnoticed", {"rate": "25", "sound": "early"}, 1),
        ("frames-unnoticed", {"rate": "25", "sound": "late"}, 3),
        ("frames-unnoticed", {"rate": "29.97", "sound": "late"}, 3),
    ],
)
def test_check_answers(lesson: Lesson, check: str, given: dict[str, Any], answer: object) -> None:
    assert CHECKS[check](lesson, **given) == answer


def test_pauses_of_a_sound_are_measured(lesson: Lesson) -> None:
    # 40 dB under line-up, and 20 dB of gain at most.
    told = CHECKS["sound-pauses"](lesson, sound="said")

    assert isinstance(told, str)
    assert told.endswith(" dB under line-up")
    assert 20 <= int(told.split()[0]) < 40
