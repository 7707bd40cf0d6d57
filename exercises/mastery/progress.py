"""How far somebody has come with a drill: three right answers without a miss, and it is held."""

from collections.abc import Iterable
from itertools import takewhile

HOLDS = 3
RECENT = 10


def unbroken(rights: Iterable[bool]) -> int:
    """How many right answers stand at the front; `rights` runs from the latest back."""
    return sum(1 for _ in takewhile(bool, rights))


def row_after(row: int, *, right: bool) -> int:
    """How far a drill's row of right answers has come after one more; once held, it stays so."""
    if row >= HOLDS:
        return row
    return row + 1 if right else 0


def is_held(rights: list[bool]) -> bool:
    """Whether so many right answers ever stood together, in any order of time."""
    run = 0
    for right in rights:
        run = run + 1 if right else 0
        if run >= HOLDS:
            return True
    return False


def mean_score(scores: list[int]) -> int:
    """The mean in hundredths, rounded half up; `scores` is not empty."""
    return (2 * sum(scores) + len(scores)) // (2 * len(scores))


def row_words(before: int, *, right: bool) -> str:
    """What one more answer did to the row, in words; nothing where the drill was held before."""
    if before >= HOLDS:
        return ""
    row = row_after(before, right=right)
    if row >= HOLDS:
        return "Held: three right answers without a miss."
    if not row:
        return "Not held yet: it takes three right answers without a miss."
    more = HOLDS - row
    return f"Not held yet: {row} right without a miss, {more} to go."
