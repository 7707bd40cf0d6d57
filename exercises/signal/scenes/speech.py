"""How far a mouth is open while somebody talks, 0 shut to 1, frame by frame."""

from collections.abc import Iterable
from math import sin

RATE = 4.5  # syllables a second, about what ordinary speech has (common practice)


def chatter(n: int, rate: int = 30) -> float:
    """Talk that means nothing: phrases of some three seconds with a breath between."""
    second = n / rate
    phrase = second % 3.6
    if phrase > 2.9:
        return 0.0
    swell = min(1.0, phrase * 5, (2.9 - phrase) * 5)
    return min(1.0, swell * _syllable(second))


def within(words: Iterable[tuple[int, int]], n: int, rate: int = 30) -> float:
    """Talk that is marked: ``words`` are spans in frames, half-open."""
    for start, end in words:
        if start <= n < end:
            edge = min(n - start + 1, end - n)
            return min(1.0, edge / 2) * max(0.25, min(1.0, _syllable(n / rate)))
    return 0.0


def blink(n: int, rate: int = 30) -> float:
    """Lids shut for about a sixth of a second, every four seconds or so."""
    since = (n / rate + 0.7 * sin(n // (4 * rate))) % 4.1
    return max(0.0, 1 - abs(since - 0.09) / 0.09)


def _syllable(second: float) -> float:
    turn = second * RATE * 6.2832
    return max(0.0, 0.45 + 0.38 * sin(turn) + 0.25 * sin(turn * 0.37 + 1) * sin(turn * 0.71))
