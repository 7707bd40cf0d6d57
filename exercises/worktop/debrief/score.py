"""What a practical comes to, and what to practise next."""

from collections.abc import Sequence

from exercises.drills.asks import Json
from exercises.drills.judging.rules import Rule
from exercises.worktop.debrief.mistakes import Mistake, worst
from exercises.worktop.debrief.proceedings import Proceedings
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


def practise(
    lines: Sequence[RubricLine], found: Sequence[Mistake], run: Proceedings
) -> Json | None:
    """One thing, by the worst line that was not got; None where all were.

    Of the master, the worst mistake counts, whichever of its two lines that is told under.
    """
    missed = {line.slug: line for line in lines if line.got is False}
    line = next((missed[slug] for slug in WORST_FIRST if slug in missed), None)
    if line is None:
        return None
    told = [each for each in found if each.line in missed]
    if line.habit or not told:
        return _told(line.slug, line.rule)
    mistake = worst(told)
    return _told(mistake.line, mistake.prevention(run))


def _told(slug: str, rule: Rule) -> Json:
    place = {name: getattr(rule, name) for name in ("skill", "lesson", "section")}
    return {"line": slug, "why": rule.text, **place}
