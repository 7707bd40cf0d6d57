"""The rubric of a practical: the master, and the habits that it was made with."""

from collections.abc import Callable

from exercises.drills.judging import rules
from exercises.drills.judging.rules import Rule
from exercises.worktop.debrief.mistakes import Mistake
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.rubric import care, economy, hands, machines, tape
from exercises.worktop.debrief.rubric.line import Judged, RubricLine

__all__ = ["RubricLine", "rubric"]

REHEARSE = Rule(
    text="Rehearse as often as it takes: nothing is recorded, and so nothing is lost.",
    skill="planning-and-time-code",
    lesson="making-an-edit",
    section="rehearse",
)
FEWEST = Rule(
    text="Think the order through on paper: fewer recordings, fewer changes of tape.",
    skill="planning-and-time-code",
    lesson="planning",
    section="order",
)

HABITS: tuple[tuple[str, str, Callable[[Proceedings], Judged], Rule], ...] = (
    ("looked-back", "You looked back after each edit", hands.looked_back, rules.AT_ONCE),
    ("rehearsed", "You rehearsed before you recorded", hands.rehearsed, REHEARSE),
    ("tracking", "Tracking was set for each source tape", machines.tracking, rules.SET_UP_FIRST),
    (
        "recorder",
        "The recorder’s tracking was left alone",
        machines.recorder,
        rules.FIXED_POSITION,
    ),
    ("levels", "Levels were set by the meters", machines.levels, rules.EACH_TAKE),
    ("at-risk", "Nothing irreplaceable was put at risk", care.at_risk, rules.KEEP_CLEAR),
    ("economy", "It took no more than it had to", economy.economy, FEWEST),
)


def rubric(run: Proceedings, found: tuple[Mistake, ...]) -> tuple[RubricLine, ...]:
    """The two of the master first."""
    return (
        _of_master("programme", "The programme is right", tape.programme(run, found), run, found),
        _of_master("faults", "It has no faults", tape.faults(run, found), run, found),
        *(_line(slug, name, judge(run), rule, habit=True) for slug, name, judge, rule in HABITS),
    )


def _of_master(
    slug: str, name: str, judged: Judged, run: Proceedings, found: tuple[Mistake, ...]
) -> RubricLine:
    """What it teaches is what would have prevented its first mistake."""
    of_it = [each for each in found if each.programme == (slug == "programme")] or list(found)
    rule = of_it[0].prevention(run) if of_it and not judged.got else rules.NO_FAULT
    return _line(slug, name, judged, rule, habit=False)


def _line(slug: str, name: str, judged: Judged, rule: Rule, *, habit: bool) -> RubricLine:
    return RubricLine(
        slug=slug,
        name=name,
        got=judged.got,
        evidence=judged.evidence,
        rule=judged.rule or rule,
        habit=habit,
    )
