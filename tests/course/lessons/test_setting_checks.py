"""Checks about faults on a diagram, a machine's adjustment, and levels."""

from pathlib import Path
from typing import Any

import pytest

from course.lessons.claims import CHECKS
from course.lessons.lesson import Lesson
from tests.course.lessons.sample import read_sample, spoilt

# A well-made shot, and the same again: its white and its voice lower, tracking and skew off.
SESSION = """\
edits = [
  { mode = "assemble", source = "A", in = 300, out = 450, at = 250, picture_level = { gain = 0 } },
  { mode = "assemble", source = "A", in = 300, out = 450, at = 400, \
picture_level = { gain = -15 }, sound_level = { gain = -40 }, \
player = { tracking = 55, skew = 12 } },
]
"""
AFTER = {"diagram": "map"}
ONE = {"diagram": "map", "edits": 1}


@pytest.fixture(scope="module")
def lesson(tmp_path_factory: pytest.TempPathFactory) -> Lesson:
    folder: Path = tmp_path_factory.mktemp("lessons")
    old = 'edits = [{ mode = "assemble", source = "A", in = 300, out = 450, at = 250 }]\n'
    return read_sample(folder, spoilt(old, SESSION))


@pytest.mark.parametrize(
    ("check", "given", "answer"),
    [
        ("automatic-gain", {"level": -40}, 20),
        ("automatic-gain", {"level": 5}, -5),
        ("automatic-reach", {}, "6 dB"),
        ("bar-level", {"bars": "bars", "bar": "white", "lines": 525}, "76.9 IRE"),
        ("bar-level", {"bars": "bars-100", "bar": "white", "lines": 625}, "700 mV"),
        ("bar-level", {"bars": "bars", "bar": "black", "lines": 625}, "0 mV"),
        ("fault-after", {**AFTER, "fault": "noise-band", "edit": 1}, "0 seconds"),
        (
            "fault-kinds",
            AFTER,
            "picture-level-jump, sound-level-jump, noise-band, bent-verticals",
        ),
        ("fault-kinds", ONE, "none"),
        ("fault-length", {**AFTER, "fault": "noise-band"}, "6 seconds"),
        ("fault-length", {**AFTER, "fault": "weak-sound"}, "0 seconds"),
        ("fault-measured", {**AFTER, "fault": "sound-level-jump", "edit": 1}, "4 dB"),
        ("fault-measured", {**AFTER, "fault": "bent-verticals", "edit": 1}, "1.2 µs"),
        ("hidden-edge", {}, 20),
        ("limit-in-tenths", {"figure": "sound_step", "unit": "dB"}, "3 dB"),
        ("limit-in-tenths", {"figure": "skew", "unit": "µs"}, "1 µs"),
        ("limited", {"level": 20}, "+1"),
        ("limited", {"level": -3}, "−3"),
        ("looped-level", {"ends": 0}, "6 dB"),
        ("looped-level", {"ends": 2}, "3.5 dB"),
        ("meter-reads", {"top": 8, "percent": 50}, "4"),
        ("pause-gain", {"seconds": 0}, 0),
        ("peak-burst", {"milliseconds": 100}, "0 dB"),
        ("peak-maximum", {}, "9 dB"),
        ("pause-gain", {"seconds": 0.5}, 13),
        ("skew-step", {"parts": 1000, "lines": 525}, "16.7 µs"),
        ("skew-width", {"microseconds": 26, "lines": 625}, 2),
        ("spacing-loss", {"micrometres": 1, "speed": 5.8, "megahertz": 4.4}, "41 dB"),
        ("tracking-loss", {"percent": 90}, "20.0 dB"),
        ("tracking-shows", {"percent": 0}, "No streaks, and hardly any fine noise."),
        ("tracking-streaks", {"percent": 0}, "none"),
        ("tracking-streaks", {"percent": -50}, "upper third"),
        ("usual-bars", {"lines": 625}, "100/0/75/0"),
        ("vu-burst", {"milliseconds": 100}, 6),
        ("vu-limit", {"figure": "distorted_sound"}, "+3 VU"),
    ],
)
def test_check_answers_from_the_models(
    lesson: Lesson, check: str, given: dict[str, Any], answer: object
) -> None:
    assert CHECKS[check](lesson, **given) == answer


def test_fault_that_is_not_there_has_no_measurement(lesson: Lesson) -> None:
    with pytest.raises(LookupError, match="edit 1 makes no weak-sound"):
        CHECKS["fault-measured"](lesson, diagram="map", fault="weak-sound", edit=1)
