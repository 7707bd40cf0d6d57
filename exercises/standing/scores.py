"""Reads: how people stand, by skill and by drill. Each is a constant number of queries."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime
from functools import reduce

from course.cohorts.models import Person
from exercises.drills.kind import Kind
from exercises.drills.register import KINDS
from exercises.mastery.misconceptions import MISCONCEPTIONS, Misconception
from exercises.mastery.progress import (
    HOLDS,
    is_held,
    row_after,
    row_words,
    unbroken,
)
from exercises.mastery.skills import SKILLS, Skill
from exercises.models import RIGHT_NOW, Attempt, Summary

LOOK_BACK = 30  # answers: about a week of practice


@dataclass(frozen=True)
class Standing:
    """Somebody's state in one skill: the mean of the last `RECENT` answers, in hundredths."""

    skill: Skill
    score: int
    answers: int
    last_practised: datetime


@dataclass(frozen=True)
class Progress:
    """How somebody stands with one drill; `rights` from the latest answer back."""

    kind: Kind
    rights: list[bool] = field(default_factory=list)
    held: bool = False

    @property
    def unbroken(self) -> int:
        return min(unbroken(self.rights), HOLDS)


def practised_skills() -> list[Skill]:
    """The skills that some drill practises, in the order of the skills' own list."""
    practised = {skill for kind in KINDS.values() for skill in kind.skills}
    return [skill for slug, skill in SKILLS.items() if slug in practised]


def standings(people: Iterable[Person]) -> dict[int, dict[str, Standing]]:
    """By person and skill; one query."""
    found: dict[int, dict[str, Standing]] = defaultdict(dict)
    for summary in Summary.objects.filter(person__in=list(people)).only("skills"):
        for slug, known in summary.skills.items():
            found[summary.person_id][slug] = Standing(
                skill=SKILLS[slug],
                score=known["score"],
                answers=known["answers"],
                last_practised=datetime.fromisoformat(known["last"]),
            )
    return found


def skills_of(person: Person) -> list[tuple[Skill, Standing | None]]:
    """Every practised skill with the person's standing in it."""
    own = standings([person])[person.pk]
    return [(skill, own.get(skill.slug)) for skill in practised_skills()]


def beliefs_of(person: Person) -> list[tuple[Misconception, int, datetime]]:
    """What the last `LOOK_BACK` answers point at, how often and when last; the critical first."""
    latest = Attempt.objects.filter(person=person).judged().latest_first()[:LOOK_BACK]
    seen: dict[str, list[datetime]] = defaultdict(list)
    for beliefs, right, answered_at in latest.values_list(
        "misconceptions", RIGHT_NOW, "answered_at"
    ):
        for belief in beliefs if not right else ():
            seen[belief].append(answered_at)
    found = [(MISCONCEPTIONS[belief], len(times), times[0]) for belief, times in seen.items()]
    return sorted(found, key=lambda each: (not each[0].critical, -each[1], each[0].id))


def progress_of(person: Person) -> list[Progress]:
    """Each drill of the register with the person's answers to it; one query."""
    rights: dict[str, list[bool]] = defaultdict(list)
    answers = Attempt.objects.filter(person=person).judged().latest_first()
    for drill, right in answers.values_list("drill", RIGHT_NOW):
        rights[drill].append(right)
    return [Progress(kind, rights[slug], is_held(rights[slug])) for slug, kind in KINDS.items()]


def row_in_words(attempt: Attempt) -> str:
    """What the attempt did to the drill's row of right answers; nothing while it waits.

    An instructor's own drill asks one question: there is no row to complete.
    """
    if attempt.result.waits or attempt.own_id:
        return ""
    known = attempt.row_before
    return row_words(row_before(attempt) if known is None else known, right=attempt.result.right)


def row_before(attempt: Attempt) -> int:
    """How far the drill's row had come before the attempt, as the answers count now."""
    same = Attempt.objects.filter(person=attempt.person_id, drill=attempt.drill).judged()
    earlier = same.filter(pk__lt=attempt.pk).order_by("pk").values_list(RIGHT_NOW, flat=True)
    return reduce(lambda row, right: row_after(row, right=right), earlier, 0)
