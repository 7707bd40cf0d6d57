"""What a summary says: of one answer more, or of all attempts."""

from collections import Counter, defaultdict, deque
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import asdict
from datetime import UTC, datetime, timedelta
from typing import Any

from exercises.mastery.progress import RECENT, row_after
from exercises.mastery.states import Counted, SkillState, State, skill_state
from exercises.models import RIGHT_NOW, SCORE_NOW, Attempt, Summary

MINUTE = timedelta(minutes=1)
READ = ("answered_at", "pending", "outcome", "own", "drill", "skill", RIGHT_NOW, SCORE_NOW)

Kept = Sequence[Any]  # an answer as `Summary.recent` has it: right, score, beliefs


def with_answer(known: Summary, attempt: Attempt) -> dict[str, Any]:
    """The columns that one answer more changes, the last one; what waits changes one alone."""
    at = attempt.answered_at.astimezone(UTC)
    given = {"given": as_text(within_a_minute(at, moments(known)))}
    if attempt.pending:
        return given
    skill, own = attempt.skill, attempt.own_id is not None
    one = as_kept(attempt.right, attempt.score, attempt.misconceptions)
    latest = [one, *known.recent.get(skill, ())][:RECENT]
    answers = known.skills[skill]["answers"] + 1 if skill in known.skills else 1
    row = row_after(known.rows.get(attempt.drill, 0), right=attempt.right)
    skills = {**known.skills, skill: as_json(state_in(latest, answers, at))}
    return {
        "skills": skills,
        **totals(skills),
        "last_practised": at,
        "recent": {**known.recent, skill: latest},
        "rows": known.rows if own else {**known.rows, attempt.drill: row},
        **given,
    }


def worked_out(person_id: int) -> dict[str, Any]:
    """A summary's columns from the attempts alone, in one query."""
    given: list[datetime] = []
    counted: list[tuple[str, datetime, Kept]] = []
    rows: dict[str, int] = {}
    for at, waits, own, drill, skill, one in answers_of(person_id):
        given = within_a_minute(at, given)
        if waits:
            continue
        counted.append((skill, at, one))
        if own is None:
            rows[drill] = row_after(rows.get(drill, 0), right=one[0])
    recent = recent_of(counted)
    numbers = Counter(skill for skill, _, _ in counted)
    last = {skill: at for skill, at, _ in counted}
    skills = {
        skill: as_json(state_in(latest, numbers[skill], last[skill]))
        for skill, latest in recent.items()
    }
    return {
        "skills": skills,
        **totals(skills),
        "last_practised": counted[-1][1] if counted else None,
        "recent": recent,
        "rows": rows,
        "given": as_text(given),
    }


def answers_of(person_id: int) -> Iterator[tuple[datetime, bool, int | None, str, str, Kept]]:
    """All answers as they were given: when, whether it waits, and as what each counts now."""
    found = Attempt.objects.filter(person=person_id).order_by("pk")
    for at, pending, outcome, own, drill, skill, *one in found.values_list(*READ, "misconceptions"):
        yield at, pending and outcome is None, own, drill, skill, as_kept(*one)


def recent_of(counted: Sequence[tuple[str, datetime, Kept]]) -> dict[str, list[Kept]]:
    """By skill, the last of them, latest first."""
    found: dict[str, deque[Kept]] = defaultdict(lambda: deque(maxlen=RECENT))
    for skill, _, one in counted:
        found[skill].appendleft(one)
    return {skill: list(latest) for skill, latest in found.items()}


def as_kept(right: bool, score: int, beliefs: Sequence[str]) -> Kept:
    """An answer as it counts; one that an instructor called right points at no belief."""
    return [right, score, [] if right else list(beliefs)]


def state_in(latest: Sequence[Kept], answers: int, last: datetime) -> SkillState:
    counted = [Counted(right=right, score=score, beliefs=held) for right, score, held in latest]
    return skill_state(counted, answers, last)


def as_json(state: SkillState) -> dict[str, Any]:
    return {**asdict(state), "last": state.last.isoformat()}


def totals(skills: Mapping[str, dict[str, Any]]) -> dict[str, Any]:
    """The columns to sort and filter by, but for when the last answer was given."""
    states = [skill["state"] for skill in skills.values()]
    weakest = min(skills, key=lambda slug: (skills[slug]["score"], slug), default="")
    return {
        "answers": sum(skill["answers"] for skill in skills.values()),
        "steady": states.count(State.STEADY),
        "stuck": states.count(State.STUCK),
        "weakest": weakest,
        "weakest_score": skills[weakest]["score"] if weakest else None,
    }


def moments(known: Summary | None) -> list[datetime]:
    """When the answers of the last minute were given, latest first."""
    return [datetime.fromisoformat(each) for each in known.given] if known else []


def within_a_minute(at: datetime, given: Sequence[datetime]) -> list[datetime]:
    """The moment of an answer, then those before it that were less than a minute ago, or ahead."""
    return [at, *(moment for moment in given if moment > at - MINUTE)]


def as_text(given: Sequence[datetime]) -> list[str]:
    return [moment.isoformat() for moment in given]
