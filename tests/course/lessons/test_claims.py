from pathlib import Path
from typing import Any

import pytest

from course.lessons.claims import CHECKS, ClaimProblem, confirm
from course.lessons.figures import duration
from course.lessons.lesson import Claim, Lesson
from exercises.tape import Rate
from tests.course.lessons.sample import read_sample, spoilt

# Black to 250; A from its 300 at 250, wiped to 500; a dark picture-only insert without run-up;
# a sound-only insert where there are no pulses.
SESSION = """\
sources.B.takes = [{ start = 0, end = 750, generation = 2 }]
edits = [
  { mode = "assemble", source = "A", in = 300, out = 450, at = 250 },
  { mode = "insert", picture = true, sound = false, source = "B", in = 50, out = 100, at = 300,\
 picture_level = { gain = -60 } },
  { mode = "insert", picture = false, sound = true, source = "B", in = 200, out = 250, at = 600 },
]
"""
AFTER = {"diagram": "map"}
ONE = {"diagram": "map", "edits": 1}
TWO = {"diagram": "map", "edits": 2}


@pytest.fixture(scope="module")
def lesson(tmp_path_factory: pytest.TempPathFactory) -> Lesson:
    old = 'edits = [{ mode = "assemble", source = "A", in = 300, out = 450, at = 250 }]\n'
    return read_sample(tmp_path_factory.mktemp("lessons"), spoilt(old, SESSION))


@pytest.mark.parametrize(
    ("check", "given", "answer"),
    [
        ("air", {"of": "playing", "what": "warmth"}, "17 to 25 °C"),
        ("air", {"of": "storing", "what": "damp"}, "40 to 55 %"),
        ("all-clean", {**ONE, "within": [250, 400]}, True),
        ("all-clean", {**ONE, "within": [250, 401]}, False),
        ("automatic-white", {"white": 60}, "100 IRE"),
        ("automatic-white", {"white": 20}, "40 IRE"),
        # An hour of labels is 108,000 frames, and those last 3,603.6 s (SMPTE ST 12-1).
        ("behind-the-clock", {"code": "01:00:00:00"}, "3.6 seconds"),
        ("bench-figure", {"figure": "lock", "rate": "29.97"}, "5 seconds"),
        # Three edits and one change of tapes, a minute each, and a minute to play and record them.
        ("bench-minutes", AFTER, "6 minutes"),
        ("bench-minutes", {**AFTER, "order": [0]}, "2 minutes"),
        ("bench-minutes", {**AFTER, "edit": 1}, "3 minutes"),
        ("care-figure", {"figure": "from magnets"}, "15 cm"),
        ("chain-snr", {"chain": [46]}, "46.0"),
        # Noise powers add: 10 log 2 = 3.01 dB.
        ("chain-snr", {"chain": [46, 46]}, "43.0"),
        ("edit-length", {**AFTER, "edit": 0}, "6 seconds"),
        ("ends-at", {**AFTER, "edit": 0}, "00:00:16:00"),
        ("faults-by", {**AFTER, "edit": 1, "states": ["unsettled"]}, 1),
        ("faults-by", {**AFTER, "edit": 1, "states": ["relock"]}, 0),
        ("faults-from", {**ONE, "kind": "flat-picture"}, 0),
        ("faults-from", {**AFTER, "kind": "flat-picture"}, 1),
        ("first-edit-in", {**AFTER, "source": "B", "take": 0}, "00:00:05:00"),
        # 29.97 frames a second (SMPTE ST 12-1): 200 ms are 5.99 frames.
        ("frames-in", {"milliseconds": 200, "rate": "29.97"}, "6 frames"),
        ("generation-at", {**AFTER, "track": "picture", "frame": 260}, 2),
        ("generation-at", {**AFTER, "track": "picture", "frame": 310}, 3),
        ("generation-at", {**AFTER, "track": "picture", "frame": 900}, 0),
        # Two heads on a drum that turns once a frame (see the sources of lesson 2): 50 a second.
        ("head-passes", {"minutes": 1, "rate": "25"}, "3,000 times"),
        ("head-passes", {"minutes": 1, "rate": "29.97"}, "3,596 times"),
        ("hole-length", {**AFTER, "between": [390, 425]}, "1 second"),
        # Two labels in each minute but six of an hour (SMPTE ST 12-1).
        ("labels-left-out", {"begins": "00:00:00;00", "ends": "01:00:00;00"}, 108),
        ("labels-left-out", {"begins": "00:00:00;00", "ends": "00:00:59;29"}, 0),
        ("laid-at", {**AFTER, "track": "sound", "frame": 310}, "A"),
        ("laid-at", {**AFTER, "track": "sound", "frame": 700}, "nothing"),
        ("laid-length", {**AFTER, "track": "picture", "source": "A"}, "4 seconds"),
        ("limit", {"figure": "flat_picture", "unit": "IRE"}, "80 IRE"),
        ("noise-grade", {"grade": 3}, "29.9"),
        ("pace", {"figure": "set_up"}, "60 seconds"),
        ("pulse-spacing", {"millimetres_a_second": 100, "rate": "25"}, "4.00"),
        ("pulses-a-second", {"rate": "29.97"}, "29.97"),
        ("recorded-over", {**TWO, "track": "picture", "before": 1}, "2 seconds"),
        ("recorded-over", {**TWO, "track": "sound", "before": 1}, "0 seconds"),
        (
            "right-modes",
            {**AFTER, "edit": 0, "change": ["picture"], "keep_behind": True},
            "assemble",
        ),
        ("right-modes", {**AFTER, "edit": 1, "change": ["sound"], "keep_behind": True}, "none"),
        ("right-modes", {**AFTER, "edit": 2, "change": ["sound"], "keep_behind": True}, "none"),
        ("run-up", {**AFTER, "edit": 1, "tape": "source"}, "2 seconds"),
        ("run-up", {**AFTER, "edit": 1, "tape": "master"}, "12 seconds"),
        ("running-time", AFTER, "10 seconds"),
        ("running-time", {**AFTER, "edit": 1, "last": 1}, "2 seconds"),
        ("state-at", {**AFTER, "frame": 0}, "relock"),
        ("state-at", {**AFTER, "frame": 650}, "no-control"),
        ("state-length", {**AFTER, "state": "unsettled", "edit": 1}, "2 seconds"),
        ("state-length", {**AFTER, "state": "no-control", "edit": 0}, "2 seconds"),
        ("state-length", {**AFTER, "state": "no-control", "within": [500, 510]}, "10 frames"),
        (
            "stripe-width",
            {"millimetres_a_second": 100, "degrees": 30, "rate": "25"},
            "1.00",
        ),
        ("tape-changes", AFTER, 1),
        ("tape-changes", {**AFTER, "order": [1, 0, 2]}, 2),
        ("track-unchanged", {**TWO, "track": "sound", "before": 1}, True),
        ("track-unchanged", {**TWO, "track": "picture", "before": 1}, False),
        ("track-unchanged", {**AFTER, "track": "control", "before": 1}, True),
        ("usable-length", {**AFTER, "source": "B", "take": 0}, "25 seconds"),
        # 20 dB are a tenth of the voltage.
        ("white-after", {"white": 100, "decibels": -20}, "10 IRE"),
    ],
)
def test_check_answers_from_the_tape_model(
    lesson: Lesson, check: str, given: dict[str, Any], answer: object
) -> None:
    assert CHECKS[check](lesson, **given) == answer


def test_mode_that_wipes_what_should_stay_is_not_right(tmp_path: Path) -> None:
    old = 'edits = [{ mode = "assemble", source = "A", in = 300, out = 450, at = 250 }]\n'
    new = (
        'edits = [{ mode = "assemble", source = "A", in = 200, out = 500, at = 250 },'
        ' { mode = "assemble", source = "A", in = 600, out = 650, at = 350 }]\n'
    )
    lesson = read_sample(tmp_path, spoilt(old, new))
    wanted = {"edit": 1, "change": ["picture", "sound"], "diagram": "map"}

    kept = CHECKS["right-modes"](lesson, keep_behind=True, **wanted)
    let_go = CHECKS["right-modes"](lesson, keep_behind=False, **wanted)

    assert kept == "insert picture and sound"
    assert let_go == "assemble, insert picture and sound"


@pytest.mark.parametrize(
    ("frames", "words"),
    [
        (0, "0 seconds"),
        (1, "1 frame"),
        (24, "24 frames"),
        (25, "1 second"),
        (26, "1 second 1 frame"),
        (60, "2 seconds 10 frames"),
    ],
)
def test_duration_in_words(frames: int, words: str) -> None:
    assert duration(frames, Rate.R25) == words


def claim(**changed: Any) -> Claim:
    told = {
        "text": "so",
        "check": "state-at",
        "given": {"diagram": "map", "frame": 0},
        "expect": "relock",
        "line": 1,
    }
    return Claim(**{**told, **changed})


@pytest.mark.parametrize(
    ("changed", "problem"),
    [
        ({"check": "guess"}, f"There is no check “guess”; there are {', '.join(CHECKS)}."),
        ({"expect": "clean"}, "“so”: expected 'clean', the tape model says 'relock'."),
        ({"given": {"diagram": "lost", "frame": 0}}, "The claim can't be checked: 'lost'."),
        (
            {"given": {"diagram": "map", "frame": 9999}},
            "The claim can't be checked: no frame 9999.",
        ),
        (
            {"check": "track-unchanged", "given": {**AFTER, "track": "smell", "before": 0}},
            "The claim can't be checked: 'smell'.",
        ),
        (
            {
                "check": "generation-at",
                "given": {**AFTER, "track": "sound", "frame": 260},
                "expect": True,
            },
            "“so”: expected True, the tape model says 2.",
        ),
    ],
)
def test_claim_that_does_not_hold_is_told(
    lesson: Lesson, changed: dict[str, Any], problem: str
) -> None:
    with pytest.raises(ClaimProblem) as told:
        confirm(lesson, claim(**changed))

    assert str(told.value) == problem


def test_claim_that_holds_passes(lesson: Lesson) -> None:
    confirm(lesson, claim())
