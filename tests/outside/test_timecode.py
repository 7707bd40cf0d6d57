"""Time code against SMPTE ST 12-1 (labels enumerated from its rule) and two libraries.

Neither library may judge whether a label exists: both take dropped labels, and one wraps
60 seconds round. Where a label exists they agree with the standard.
"""

from collections.abc import Iterator

import opentimelineio.opentime as otio
import pytest
from timecode.timecode import Timecode

from exercises.tape import Rate, TimecodeError, frame_of, label

OTIO_29_97 = 30000 / 1001


def enumerated(nominal: int, *, drop: bool) -> Iterator[str]:
    """The labels of one day, in order.

    SMPTE ST 12-1: frames 00 and 01 are left out at the start of every minute, except in
    minutes 00, 10, 20, 30, 40 and 50.
    """
    mark = ";" if drop else ":"
    frames = [f"{frame:02}" for frame in range(nominal)]
    for minute in range(1440):
        for second in range(60):
            start = f"{minute // 60:02}:{minute % 60:02}:{second:02}{mark}"
            leaves_out = drop and second == 0 and minute % 10 != 0
            for frame in frames[2:] if leaves_out else frames:
                yield start + frame


@pytest.mark.parametrize(
    ("rate", "drop", "day"),
    [
        pytest.param(Rate.R29_97, True, 2_589_408, id="29.97 drop-frame"),
        pytest.param(Rate.R29_97, False, 2_592_000, id="29.97 non-drop"),
        pytest.param(Rate.R25, False, 2_160_000, id="25"),
    ],
)
def test_labels_of_a_day_are_the_standards(rate: Rate, drop: bool, day: int) -> None:
    """SMPTE ST 12-1 and EBU 25-frame code: the labels enumerated from the rule.

    About every turn of a minute, and the whole of eleven minutes; between, a stride that meets
    every frame of a second.
    """
    frame = -1
    for frame, text in enumerate(enumerated(rate.nominal, drop=drop)):
        looked_at = frame % 97 == 0 or frame < 20_000 or text[6:8] in ("00", "59")
        if looked_at and (label(frame, rate, drop) != text or frame_of(text, rate) != frame):
            pytest.fail(f"{frame} is {text}, not {label(frame, rate, drop)}")

    assert frame + 1 == day == rate.day(drop=drop)


# SMPTE ST 12-1, worked out; the rows up to 17,982 and 1,084,316 also stand in
# OpenTimelineIO's own tests (tests/test_opentime.py).
WORKED = [
    (0, "00:00:00;00"),
    (1_799, "00:00:59;29"),
    (1_800, "00:01:00;02"),
    (3_598, "00:02:00;02"),
    (10_789, "00:05:59;29"),
    (10_790, "00:06:00;02"),
    (17_981, "00:09:59;29"),
    (17_982, "00:10:00;00"),
    (19_782, "00:11:00;02"),
    (107_891, "00:59:59;29"),
    (107_892, "01:00:00;00"),
    (215_784, "02:00:00;00"),
    (1_084_316, "10:03:00;02"),
    (2_589_407, "23:59:59;29"),
]


@pytest.mark.parametrize(("frame", "text"), WORKED)
def test_drop_frame_label_matches_the_worked_table(frame: int, text: str) -> None:
    """OpenTimelineIO's tests/test_opentime.py, and the labels of SMPTE ST 12-1 counted out."""
    assert label(frame, Rate.R29_97, drop=True) == text
    assert frame_of(text, Rate.R29_97) == frame


def test_dropped_label_is_refused_all_day() -> None:
    """SMPTE ST 12-1: labels that do not exist."""
    refused = 0
    for minute in range(1440):
        for frame in ("00", "01") if minute % 10 else ():
            with pytest.raises(TimecodeError):
                frame_of(f"{minute // 60:02}:{minute % 60:02}:00;{frame}", Rate.R29_97)
            refused += 1

    # 108 labels an hour are left out (SMPTE ST 12-1).
    assert refused == 108 * 24


# Frames about every minute's and the day's turn, and a stride through the rest of the day.
SAMPLED = sorted(
    {turn * 1798 + near for turn in range(1, 1440) for near in range(-3, 4)}
    | set(range(0, 2_589_408, 97))
    | set(range(2_589_408 - 3_000, 2_589_408))
)


def test_drop_frame_agrees_with_opentimelineio() -> None:
    """OpenTimelineIO."""
    differing = [
        frame
        for frame in SAMPLED
        if otio.to_timecode(otio.RationalTime(frame, OTIO_29_97), OTIO_29_97, True)
        != label(frame, Rate.R29_97, drop=True)
        or otio.from_timecode(label(frame, Rate.R29_97, True), OTIO_29_97).value != frame
    ]

    assert differing == []


@pytest.mark.parametrize(("rate", "otio_rate"), [(Rate.R29_97, OTIO_29_97), (Rate.R25, 25)])
def test_non_drop_agrees_with_opentimelineio(rate: Rate, otio_rate: float) -> None:
    """OpenTimelineIO."""
    differing = [
        frame
        for frame in SAMPLED
        if frame < rate.day()
        and otio.to_timecode(otio.RationalTime(frame, otio_rate), otio_rate, False)
        != label(frame, rate)
    ]

    assert differing == []


@pytest.mark.parametrize(
    ("rate", "drop"), [(Rate.R29_97, True), (Rate.R29_97, False), (Rate.R25, False)]
)
def test_label_agrees_with_timecode_library(rate: Rate, drop: bool) -> None:
    """The library timecode."""
    differing = [
        frame
        for frame in SAMPLED[::5]
        if frame < rate.day()
        # Its `frames` count from 1.
        and str(Timecode(rate.label, frames=frame + 1, force_non_drop_frame=not drop))
        != label(frame, rate, drop)
    ]

    assert differing == []


def test_frame_agrees_with_timecode_library() -> None:
    """The library timecode."""
    differing = [
        text
        for frame in SAMPLED[::5]
        for text in [label(frame, Rate.R29_97, drop=True)]
        if Timecode("29.97", text).frame_number != frame_of(text, Rate.R29_97)
    ]

    assert differing == []


def test_hour_of_drop_frame_code_is_an_hour() -> None:
    """SMPTE ST 12-1: 107,892 frames at 30000/1001 a second last 3599.9964 s, 3.6 ms short of an
    hour; 108,000 labels of which none is left out last 3603.6 s (derived here).
    """
    rate = Rate.R29_97.fraction

    assert frame_of("01:00:00;00", Rate.R29_97) / rate * 10_000 == 35_999_964
    assert frame_of("01:00:00:00", Rate.R29_97) / rate * 10 == 36_036
