"""Beliefs beside which others make no difference.

Who expects the player to be locked in any case expects it after a take that touches, too; and
where somebody expects nothing to play, nobody sees how it ends. Who holds both may answer as
who holds the first alone. Such sets can't be told apart, and needn't be: each of their beliefs
alone answers otherwise.
"""

from collections.abc import Collection

INCLUDES: dict[str, frozenset[str]] = {
    # whoever needs no run-up needs none from elsewhere
    "no-source-run-up": frozenset(("touching-takes-share-pulses", "pre-roll-makes-run-up")),
    "no-master-run-up": frozenset(("pre-roll-makes-run-up", "black-is-blank")),
    # whoever takes a hole to do no harm counts run-up across it
    "gap-heals": frozenset(("late-is-safer", "no-master-run-up")),
    "late-is-safer": frozenset(("no-master-run-up",)),
    # blank tape shows nothing, steady or not
    "black-is-blank": frozenset(("no-master-run-up", "insert-ends-ragged")),
}


def goes_without_saying(more: Collection[str], held: Collection[str]) -> bool:
    """Whether somebody with all these beliefs may answer as somebody with some of them."""
    beside = set(more) - set(held)
    return set(held) < set(more) and all(
        any(belief in INCLUDES.get(each, ()) for each in held) for belief in beside
    )
