"""The rubric of a practical: the master, and the habits that it was made with."""

from collections.abc import Callable

from exercises.drills.judging import rules
from exercises.drills.judging.rules import Rule
from exercises.worktop.debrief.mistakes import Mistake, worst
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.rubric import care, economy, hands, machines, tape
from exercises.worktop.debrief.rubric.line import Judged, RubricLine
from exercises.worktop.habits import HABITS

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

Judge = Callable[[Proceedings], Judged]

LINES: dict[str, tuple[str, Judge, Rule]] = {
    "looked-back": (HABITS["looked-back"], hands.looked_back, rules.AT_ONCE),
    "rehearsed": (HABITS["rehearsed"], hands.rehearsed, REHEARSE),
    "tracking": (HABITS["tracking"], machines.tracking, rules.SET_UP_FIRST),
    "recorder": (HABITS["recorder"], machines.recorder, rules.FIXED_POSITION),
    "levels": (HABITS["levels"], machines.levels, rules.EACH_TAKE),
    "at-risk": (HABITS["at-risk"], care.at_risk, rules.KEEP_CLEAR),
    "economy": ("No more edits and time than it takes", economy.economy, FEWEST),
}


def rubric(run: Proceedings, found: tuple[Mistake, ...]) -> tuple[RubricLine, ...]:
    """The two of the master first."""
    return (
        _of_master(
            "programme", "The programme as the brief asks", tape.programme(run, found), run, found
        ),
        _of_master("faults", "No faults in what was recorded", tape.faults(run, found), run, found),
        *(
            _line(slug, name, judge(run), rule, habit=True)
            for slug, (name, judge, rule) in LINES.items()
        ),
    )


def _of_master(
    slug: str, name: str, judged: Judged, run: Proceedings, found: tuple[Mistake, ...]
) -> RubricLine:
    """What it teaches is what would have prevented its worst mistake."""
    of_it = [each for each in found if each.line == slug] or list(found)
    rule = worst(of_it).prevention(run) if of_it and not judged.got else rules.NO_FAULT
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
