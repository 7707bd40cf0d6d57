"""Which drill comes next in a sitting: no random numbers, the same every time."""

from collections.abc import Sequence
from dataclasses import dataclass

from exercises.mastery.progress import HOLDS, unbroken

# Drills whose questions are easily taken for one another. Mixed in a sitting, the difference
# between them is practised too (Brunmair & Richter 2019).
LOOK_ALIKES: tuple[frozenset[str], ...] = (
    frozenset({"spot-the-bad-edit", "spot-by-eye", "spot-by-ear"}),
    frozenset({"choose-the-mode", "what-will-play", "mend-it"}),
    frozenset({"set-tracking", "set-skew", "watch-it-drift"}),
    frozenset({"set-picture-level", "set-sound-level", "levels-on-paper"}),
)


@dataclass(frozen=True, kw_only=True)
class Candidate:
    """A drill that a sitting may take from: `rights` from the latest answer back."""

    slug: str
    rights: tuple[bool, ...] = ()


def next_drill(candidates: Sequence[Candidate], taken: Sequence[str]) -> str:
    """The slug of the drill to ask next; `taken` are those asked in this set, in order.

    Fewest right without a miss first; of those, the one that this set has asked least, then one
    that looks like the last question, then the order of the candidates. Never the same
    drill twice running where there is another. ValueError without candidates.
    """
    if not candidates:
        raise ValueError("There is no drill to choose from.")
    last = taken[-1] if taken else ""
    others = [each for each in candidates if each.slug != last] or list(candidates)
    return min(others, key=lambda each: _rank(each, taken, last)).slug


def _rank(candidate: Candidate, taken: Sequence[str], last: str) -> tuple[int, int, bool]:
    row = min(unbroken(candidate.rights), HOLDS)
    return row, taken.count(candidate.slug), not look_alike(candidate.slug, last)


def look_alike(one: str, other: str) -> bool:
    """Whether two different drills are easily taken for one another."""
    return one != other and any({one, other} <= group for group in LOOK_ALIKES)
