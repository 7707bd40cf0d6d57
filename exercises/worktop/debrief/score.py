"""What a practical comes to, and what to practise next."""

from collections.abc import Sequence

from exercises.drills.asks import Json
from exercises.worktop.debrief.rubric import RubricLine

OF_MASTER = 30  # hundredths for each of the two lines of the master
OF_HABITS = 40  # for all habits together
SCORING = (
    f"{OF_MASTER} of 100 for the right programme, {OF_MASTER} for no faults, and {OF_HABITS} "
    "shared by the habits that came up."
)
# What hurts most comes first: what can't be had again, then the master, then the habits.
WORST_FIRST = (
    "at-risk",
    "programme",
    "faults",
    "recorder",
    "tracking",
    "levels",
    "looked-back",
    "rehearsed",
    "economy",
)


def score(lines: Sequence[RubricLine]) -> int:
    """In hundredths, rounded down."""
    master = sum(OF_MASTER for line in lines if not line.habit and line.got)
    habits = [line.got for line in lines if line.habit and line.got is not None]
    return master + (OF_HABITS * sum(habits) // len(habits) if habits else 0)


def practise(lines: Sequence[RubricLine]) -> Json | None:
    """One thing, by the worst line that was not got; None where all were."""
    missed = {line.slug: line for line in lines if line.got is False}
    line = next((missed[slug] for slug in WORST_FIRST if slug in missed), None)
    return None if line is None else {"line": line.slug, "why": line.rule.text, **_place(line)}


def _place(line: RubricLine) -> Json:
    return {name: getattr(line.rule, name) for name in ("skill", "lesson", "section")}
