"""A lesson's paper edit and time code, worked out by OpenTimelineIO."""

import re

import pytest
from opentimelineio.opentime import RationalTime, from_timecode, to_timecode

from course.lessons.lesson import Lesson
from course.lessons.plans import behind_the_clock, labels_left_out
from course.lessons.shelf import shelf

CODE = r"\d\d:\d\d:\d\d:\d\d"
ROW = re.compile(rf"(?P<first>{CODE}) (?P<last>{CODE}) (?P<length>\d+) s (?P<at>{CODE})")
NTSC = 30000 / 1001


@pytest.fixture(scope="module")
def lesson() -> Lesson:
    found = shelf().find("planning")
    assert found is not None
    return found


@pytest.fixture(scope="module")
def rows(lesson: Lesson) -> list[re.Match[str]]:
    found = list(ROW.finditer(lesson.text()))
    assert len(found) == 5
    return found


def frames(code: str) -> int:
    return int(from_timecode(code, 25).value)


def test_lengths_of_the_paper_edit(rows: list[re.Match[str]]) -> None:
    """OpenTimelineIO's from_timecode."""
    told = [int(row["length"]) for row in rows]

    assert told == [(frames(row["last"]) - frames(row["first"])) / 25 for row in rows]


def test_places_of_the_paper_edit(lesson: Lesson, rows: list[re.Match[str]]) -> None:
    """OpenTimelineIO's to_timecode."""
    begins = frames(rows[0]["at"])
    places = []
    for row in rows:
        places.append(to_timecode(RationalTime(begins, 25), 25, False))
        begins += frames(row["last"]) - frames(row["first"])

    assert [row["at"] for row in rows] == places
    assert f"the last one ends at {to_timecode(RationalTime(begins, 25), 25, False)}" in (
        lesson.text()
    )


def test_labels_that_drop_frame_leaves_out_in_an_hour(lesson: Lesson) -> None:
    """OpenTimelineIO: an hour of SMPTE ST 12-1 drop-frame and other code."""
    without = int(from_timecode("01:00:00:00", NTSC).value)
    held = int(from_timecode("01:00:00;00", NTSC).value)

    told = labels_left_out(lesson, begins="00:00:00;00", ends="01:00:00;00")

    assert told == without - held


def test_how_far_other_code_lags(lesson: Lesson) -> None:
    """OpenTimelineIO: an hour of SMPTE ST 12-1 code that leaves nothing out."""
    hour = from_timecode("01:00:00:00", NTSC)

    told = behind_the_clock(lesson, code="01:00:00:00")

    assert told == f"{hour.to_seconds() - 3600:.1f} seconds"
