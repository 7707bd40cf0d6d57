"""Times and lists in words."""

from collections.abc import Sequence

from exercises.tape import Bench, Rate, label


def code(frame: int, bench: Bench) -> str:
    """`00:01:10:00`, as the bench's time code counts."""
    return label(frame, bench.rate, bench.drop_frame)


def span(start: int, end: int, bench: Bench) -> str:
    """`from 00:01:10:00 to 00:01:16:12`."""
    return f"from {code(start, bench)} to {code(end, bench)}"


def length(frames: int, rate: Rate) -> str:
    """`6 seconds 12 frames`, 30 frames a second at 29.97."""
    seconds, rest = divmod(frames, rate.nominal)
    minutes, seconds = divmod(seconds, 60)
    counts = {"minute": minutes, "second": seconds, "frame": rest}
    parts = [f"{n} {unit}{'' if n == 1 else 's'}" for unit, n in counts.items() if n]
    return " ".join(parts) or "0 frames"


def listed(words: Sequence[str]) -> str:
    """`picture`, `picture and sound`, `picture, sound and pulses`."""
    *others, last = words
    return f"{', '.join(others)} and {last}" if others else last


def begun(sentence: str) -> str:
    """A phrase as a sentence begins with it."""
    return sentence[:1].upper() + sentence[1:]
