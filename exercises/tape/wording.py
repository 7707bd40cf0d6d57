"""Times and lists in words."""

from collections.abc import Sequence

from exercises.tape.rate import Rate
from exercises.tape.timecode import label


def lasting(frames: int, rate: Rate) -> str:
    """How long something is, as the time code counts.

    >>> lasting(60, Rate.R29_97), lasting(1, Rate.R25), lasting(1637, Rate.R25)
    ('2 s', '1 frame', '1 min 5 s 12 frames')
    """
    seconds, rest = divmod(frames, rate.nominal)
    minutes, seconds = divmod(seconds, 60)
    parts = [f"{minutes} min"] if minutes else []
    parts += [f"{seconds} s"] if seconds else []
    parts += [f"{rest} frame{'' if rest == 1 else 's'}"] if rest or not parts else []
    return " ".join(parts)


def run_up(frames: int, rate: Rate) -> str:
    """``2 s of run-up``, or ``no run-up``."""
    return f"{lasting(frames, rate)} of run-up" if frames else "no run-up"


def span(start: int, end: int, rate: Rate, drop: bool = False) -> str:
    """``from 00:01:10:00 to 00:01:16:12``; the second is the first frame no longer meant."""
    return f"from {label(start, rate, drop)} to {label(end, rate, drop)}"


def listed(words: Sequence[str]) -> str:
    """
    >>> listed(["picture"]), listed(["picture", "sound", "pulses"])
    ('picture', 'picture, sound and pulses')
    """
    *others, last = words
    return f"{', '.join(others)} and {last}" if others else last
