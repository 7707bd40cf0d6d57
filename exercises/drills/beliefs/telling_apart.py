"""Questions that tell beliefs apart: the answer under every subset of those they touch.

What a kind keeps of it is JSON: a list of `[beliefs, answer]`, the true answer first.
"""

from collections.abc import Callable, Collection, Sequence
from itertools import combinations
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.beliefs.including import goes_without_saying

Believed = list[list[Any]]  # each a list of beliefs, and the answer under them

MOST = 4  # beliefs that one question touches; they have 16 subsets


def touched(
    beliefs: Sequence[str],
    answer: Callable[[frozenset[str]], Json | None],
    *,
    true: Json | None = None,
) -> list[str]:
    """The beliefs that alone change the answer."""
    right = answer(frozenset()) if true is None else true
    return [belief for belief in beliefs if answer(frozenset((belief,))) != right]


def told_apart(
    beliefs: Sequence[str], answer: Callable[[frozenset[str]], Json | None]
) -> Believed | None:
    """The answer under every subset of the beliefs that change it.

    None where nothing or too much changes it, two subsets answer alike, or one has no
    answer: such a question can't tell what somebody believes. Alike may answer who holds
    beliefs of which one goes further than another, and who holds that one alone.
    """
    true = answer(frozenset())
    changing = touched(beliefs, answer, true=true)
    if not 0 < len(changing) <= MOST:
        return None
    found: Believed = []
    for subset in subsets(changing):
        given = answer(frozenset(subset)) if subset else true
        alike = next((held for held, other in found if given == other), None)
        if given is None or not (alike is None or goes_without_saying(subset, alike)):
            return None
        found.append([list(subset), given])
    return found


def as_many_as_can_be(
    beliefs: Sequence[str], answer: Callable[[frozenset[str]], Json | None]
) -> Believed | None:
    """As `told_apart`, of as many of the beliefs as can be; the first ones go first.

    Those that have no answer, alone or with others, are left out.
    """
    found: Believed | None = None
    held: list[str] = []
    for belief in beliefs:
        kept = told_apart([*held, belief], answer) if len(held) < MOST else None
        if kept and len(kept) == 2 ** (len(held) + 1):
            found, held = kept, [*held, belief]
    return found


def subsets(beliefs: Sequence[str]) -> list[tuple[str, ...]]:
    """All of them, the empty one first."""
    return [subset for size in range(len(beliefs) + 1) for subset in combinations(beliefs, size)]


def believed(kept: Believed, held: Collection[str]) -> Json:
    """The answer of somebody with these beliefs."""
    expected = [[subset, answer] for subset, answer in kept if set(subset) <= set(held)]
    return dict(max(expected, key=lambda entry: len(entry[0]))[1])


def explained(kept: Believed, answer: Json) -> tuple[str, ...]:
    """The beliefs that lead to an answer; none where it is right or nothing explains it."""
    return next((tuple(subset) for subset, given in kept if given == answer), ())
