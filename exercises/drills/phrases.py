"""Times and lists in words."""

from collections.abc import Sequence

from exercises.tape import Rate, label


def span(start: int, end: int, rate: Rate) -> str:
    """`from 00:01:10:00 to 00:01:16:12`."""
    return f"from {label(start, rate)} to {label(end, rate)}"


def length(frames: int, rate: Rate) -> str:
    """`6 seconds 12 frames`, as the time code counts."""
    seconds, rest = divmod(frames, rate.nominal)
    parts = []
    if seconds:
        parts.append(f"{seconds} second{'' if seconds == 1 else 's'}")
    if rest or not seconds:
        parts.append(f"{rest} frame{'' if rest == 1 else 's'}")
    return " ".join(parts)


def listed(words: Sequence[str]) -> str:
    """`picture`, `picture and sound`, `picture, sound and pulses`."""
    *others, last = words
    return f"{', '.join(others)} and {last}" if others else last


def begun(sentence: str) -> str:
    """A phrase as a sentence begins with it."""
    return sentence[:1].upper() + sentence[1:]
