"""How far somebody has come with a drill: three right in a row complete it."""

from collections.abc import Iterable
from itertools import takewhile

COMPLETE = 3
RECENT = 10


def in_a_row(rights: Iterable[bool]) -> int:
    """How many right answers stand at the front; `rights` runs from the latest back."""
    return sum(1 for _ in takewhile(bool, rights))


def is_complete(rights: list[bool]) -> bool:
    """Whether `COMPLETE` right answers ever stood in a row, in any order of time."""
    run = 0
    for right in rights:
        run = run + 1 if right else 0
        if run >= COMPLETE:
            return True
    return False


def mean_score(scores: list[int]) -> int:
    """The mean in hundredths, rounded half up; `scores` is not empty."""
    return (2 * sum(scores) + len(scores)) // (2 * len(scores))


def row_words(rights: list[bool]) -> str:
    """How far the row has come, in words, after the latest answer; `rights` from it back."""
    if is_complete(rights[1:]):
        return ""
    row = in_a_row(rights)
    if row >= COMPLETE:
        return "Three right in a row: you have completed this drill."
    if not row:
        return "Three right in a row complete this drill."
    more = COMPLETE - row
    return f"{row} right in a row. {more} more {'completes' if more == 1 else 'complete'} it."
