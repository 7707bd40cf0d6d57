"""Asking for help: it changes nothing on the bench, and is kept as what was asked."""

from exercises.worktop.done import BenchRefused, Done
from exercises.worktop.worktop import Worktop

DEPTHS = ("what", "why", "how")


def hint(top: Worktop, *, depth: str, told: str) -> Done:
    """`told` is what was said then: the guide may say it otherwise one day."""
    if depth not in DEPTHS:
        raise BenchRefused("A hint says what to do next, then why, then how.")
    return Done(top, told)
