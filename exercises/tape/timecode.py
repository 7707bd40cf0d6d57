"""Time code, both ways, after SMPTE ST 12-1 (29.97) and the EBU 25-frame code.

Drop-frame code leaves out labels, never pictures: frames 00 and 01 of every minute,
except in minutes 00, 10, 20, 30, 40 and 50.
"""

import re

from exercises.tape.errors import TimecodeError
from exercises.tape.rate import Rate

TEN_MINUTES = 17_982  # drop-frame labels in ten minutes: 10 × 1,800 less 9 × 2
MINUTE = 1_798  # drop-frame labels in a minute that drops two

_LABEL = re.compile(r"([0-9]{2}):([0-9]{2}):([0-9]{2})([:;])([0-9]{2})")


def label(frame: int, rate: Rate, drop: bool = False) -> str:
    """The label of a frame, counted from 0 at midnight.

    >>> label(1800, Rate.R29_97)
    '00:01:00:00'
    >>> label(1800, Rate.R29_97, drop=True)
    '00:01:00;02'
    """
    _check_drop(rate, drop)
    if not 0 <= frame < rate.day(drop=drop):
        raise TimecodeError(f"Frame {frame} has no label: a day has {rate.day(drop=drop)} labels.")
    count = frame + _dropped_before(frame) if drop else frame
    seconds, frames = divmod(count, rate.nominal)
    minutes, second = divmod(seconds, 60)
    hour, minute = divmod(minutes, 60)
    return f"{hour:02}:{minute:02}:{second:02}{';' if drop else ':'}{frames:02}"


def frame_of(text: str, rate: Rate) -> int:
    """The frame that a label names; ``;`` before the frames means drop-frame code.

    ::

        01:00:00;00
        │  │  │ │└─ frame, 00 to 29 (24 at 25)
        │  │  │ └── ; drop-frame, : non-drop
        │  │  └──── second
        │  └─────── minute
        └────────── hour, 00 to 23

    Raises TimecodeError for a label that does not exist, a dropped one included.
    """
    match = _LABEL.fullmatch(text)
    if match is None:
        raise TimecodeError(f"{_short(text)} is not time code: write HH:MM:SS:FF.")
    hour, minute, second, frames = map(int, match.group(1, 2, 3, 5))
    drop = match[4] == ";"
    _check_drop(rate, drop)
    if hour > 23 or minute > 59 or second > 59 or frames >= rate.nominal:
        raise TimecodeError(f"{text} does not exist: the last label is {_last(rate, drop)}.")
    minutes = 60 * hour + minute
    count = (60 * minutes + second) * rate.nominal + frames
    if not drop:
        return count
    if second == 0 and frames < 2 and minute % 10:
        raise TimecodeError(f"{text} does not exist: drop-frame code leaves it out.")
    return count - 2 * (minutes - minutes // 10)


def frame_at(count: int) -> int:
    """The frame that a count of labels comes to where drop-frame code leaves some out.

    The label that is left out gives the next one there is.

    >>> frame_at(1800), label(frame_at(1800), Rate.R29_97, drop=True)
    (1800, '00:01:00;02')
    """
    minutes, rest = divmod(count, 60 * Rate.R29_97.nominal)
    left_out = 2 - rest if minutes % 10 and rest < 2 else 0
    return count + left_out - 2 * (minutes - minutes // 10)


def _dropped_before(frame: int) -> int:
    """How many labels drop-frame code left out up to this frame."""
    tens, rest = divmod(frame, TEN_MINUTES)
    return 18 * tens + (2 * ((rest - 2) // MINUTE) if rest >= 2 else 0)


def _check_drop(rate: Rate, drop: bool) -> None:
    if drop and rate is not Rate.R29_97:
        raise TimecodeError(f"There is no drop-frame code at {rate.label} frames a second.")


def _last(rate: Rate, drop: bool) -> str:
    return label(rate.day(drop=drop) - 1, rate, drop)


def _short(text: str) -> str:
    return ascii(text) if len(text) <= 40 else ascii(text[:40]) + "…"
