"""The verbs that keep summaries in step with attempts, and prove that they are.

Nothing is counted up: what changed is worked out again from the attempts themselves, so the
order in which answers and scores arrive makes no difference. The summary's row is locked
first: of two answers at once the second one sees the first.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import asdict
from datetime import datetime
from typing import Any

from django.db import IntegrityError, transaction
from django.db.models import Count, Exists, OuterRef, Q, QuerySet, Window

from course.cohorts.models import Person
from exercises.mastery.progress import RECENT
from exercises.mastery.states import RULES, Counted, SkillState, State, skill_state
from exercises.models import RIGHT_NOW, SCORE_NOW, Attempt, Summary

COLUMNS = ("skills", "answers", "last_practised", "steady", "stuck", "weakest", "weakest_score")
COUNTED = (RIGHT_NOW, SCORE_NOW, "misconceptions", "answered_at")


def refresh(person_id: int, skill: str) -> None:
    """Work out one skill of somebody's summary again. Within the transaction that changed it."""
    summary = locked(person_id)
    if summary.rules != RULES:
        fill(summary)
        return
    found = state_in(person_id, skill)
    if found is None:
        summary.skills.pop(skill, None)
    else:
        summary.skills[skill] = as_json(found)
    summary.__dict__.update(totals(summary.skills))
    summary.last_practised = last_practised(person_id)
    summary.save()


def fill(summary: Summary) -> None:
    """Make all of it anew. It is locked."""
    summary.__dict__.update(worked_out(summary.person_id), rules=RULES)
    summary.save()


def locked(person_id: int) -> Summary:
    """Somebody's summary, which nobody else changes until the transaction ends."""
    rows = Summary.objects.select_for_update()
    return rows.filter(pk=person_id).first() or first_summary(rows, person_id)


def first_summary(rows: QuerySet[Summary], person_id: int) -> Summary:
    """The summary of somebody who had none; another answer at once may have made it."""
    try:
        with transaction.atomic():
            return Summary.objects.create(pk=person_id)
    except IntegrityError:
        return rows.get(pk=person_id)


def state_in(person_id: int, skill: str) -> SkillState | None:
    """How somebody stands in a skill; None while no answer of theirs counts. One query."""
    answers = Attempt.objects.filter(person=person_id, skill=skill).judged()
    rows = answers.latest_first().values_list(*COUNTED, Window(Count("pk")))[:RECENT]
    latest = list(rows)
    return skill_state([counted(*row[:-1]) for row in latest], latest[0][-1]) if latest else None


def counted(right: bool, score: int, beliefs: list[str], at: datetime) -> Counted:
    """An answer as it counts; one that an instructor called right points at no belief."""
    return Counted(right=right, score=score, beliefs=[] if right else beliefs, at=at)


def as_json(state: SkillState) -> dict[str, Any]:
    return {**asdict(state), "last": state.last.isoformat()}


def totals(skills: dict[str, dict[str, Any]]) -> dict[str, Any]:
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


def worked_out(person_id: int) -> dict[str, Any]:
    """A summary's columns from the attempts alone, in three queries."""
    answers = Attempt.objects.filter(person=person_id).judged()
    numbers = dict(answers.values_list("skill").annotate(number=Count("pk")).order_by())
    recent: dict[str, list[Counted]] = defaultdict(list)
    rows = answers.recent(RECENT).latest_first().values_list("skill", *COUNTED)
    for skill, *row in rows:
        recent[skill].append(counted(*row))
    skills = {
        skill: as_json(skill_state(latest, numbers[skill])) for skill, latest in recent.items()
    }
    return {"skills": skills, **totals(skills), "last_practised": last_practised(person_id)}


def last_practised(person_id: int) -> datetime | None:
    """When the last answer was given that counts: the one given last, whatever its date."""
    answers = Attempt.objects.filter(person=person_id).judged().latest_first()
    return answers.values_list("answered_at", flat=True).first()


def rebuild(people: Iterable[int]) -> int:
    """Make these people's summaries anew, each in its own transaction; how many there were.

    Safe while answers arrive: whoever answers waits for the row, or is waited for.
    """
    made = 0
    for person_id in people:
        with transaction.atomic():
            fill(locked(person_id))
        made += 1
    return made


def differing(people: Iterable[int]) -> Iterator[tuple[int, Sequence[str]]]:
    """People whose summary is not what their attempts come to, and the columns that differ."""
    for person_id in people:
        with transaction.atomic():
            kept = locked(person_id)
            right = worked_out(person_id)
        columns = [name for name in COLUMNS if getattr(kept, name) != right[name]]
        if kept.rules != RULES:
            columns.append("rules")
        if columns:
            yield person_id, columns


def who_has_answered() -> list[int]:
    """Everybody with an attempt or a summary."""
    with_attempts = Person.objects.filter(attempts__isnull=False)
    with_summary = Person.objects.filter(summary__isnull=False)
    return sorted(
        {*with_attempts.values_list("pk", flat=True), *with_summary.values_list("pk", flat=True)}
    )


def outdated() -> list[int]:
    """Everybody whose summary goes by other rules, or who should have one."""
    answered = Exists(Attempt.objects.filter(person=OuterRef("pk")))
    missing = Q(answered, summary=None)
    other = Q(summary__isnull=False) & ~Q(summary__rules=RULES)
    return list(Person.objects.filter(missing | other).order_by("pk").values_list("pk", flat=True))
