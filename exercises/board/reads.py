"""The readiness board: a cohort's people by skills, read from summaries alone."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from django.core.paginator import Page, Paginator
from django.db.models import Count, F, Q, QuerySet

from course.cohorts.models import Cohort, Person
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.mastery.skills import SKILLS, Skill
from exercises.mastery.states import State
from exercises.models import Summary
from exercises.standing.scores import practised_skills

Since = tuple[datetime, datetime]  # whoever answered within it is not idle
CLOCKS_DIFFER = timedelta(hours=1)
PER_PAGE = 25
WHOLE = 1000  # people on the page that is made for printing
UNREAD = ("summary__recent", "summary__rows", "summary__given")
NAMED = 5  # people that the overview names
ORDERS = {
    "name": ("name", "pk"),
    "last": (F("summary__last_practised").asc(nulls_first=True), "name", "pk"),
    "weakest": (F("summary__weakest_score").asc(nulls_last=True), "name", "pk"),
    "stuck": (F("summary__stuck").desc(nulls_last=True), "name", "pk"),
    "steady": (F("summary__steady").asc(nulls_first=True), "name", "pk"),
}


@dataclass(frozen=True, kw_only=True)
class BoardWanted:
    """What of a board is to be seen. Every part is one of the form's choices, or empty."""

    sort: str = "name"
    show: str = ""
    skill: str = ""
    state: str = ""
    name: str = ""
    idle_days: int = 7
    page: str = ""
    whole: bool = False


@dataclass(frozen=True)
class Cell:
    """How somebody stands in a skill, for the board."""

    skill: Skill
    state: State
    score: int | None = None

    @property
    def word(self) -> str:
        return self.state.value.replace("-", " ")


@dataclass(frozen=True)
class BoardRow:
    person: Person
    summary: Summary | None
    cells: list[Cell]

    @property
    def weakest(self) -> Skill | None:
        return SKILLS.get(self.summary.weakest) if self.summary else None


@dataclass(frozen=True)
class StuckOn:
    """Somebody, the skill they are stuck in, and the belief behind it, if one shows."""

    person: Person
    skill: Skill
    sentence: str
    times: int


@dataclass(frozen=True, kw_only=True)
class Overview:
    """The cohort in a few words; `idle` and `stuck` name some, the numbers count all."""

    people: int
    idle_number: int
    stuck_number: int
    idle: list[Person]
    stuck: list[StuckOn]


@dataclass(frozen=True)
class BoardPage:
    skills: list[Skill]
    rows: list[BoardRow]
    page: "Page[Person]"
    overview: Overview


def readiness(cohort: Cohort, wanted: BoardWanted, *, now: datetime) -> BoardPage:
    """One page of the board. Five queries, however many people and attempts there are."""
    since = (now - timedelta(days=wanted.idle_days), now + CLOCKS_DIFFER)
    everybody = Person.objects.learning_in(cohort).select_related("summary").defer(*UNREAD)
    chosen = chosen_of(everybody, wanted, since).order_by(*ORDERS[wanted.sort])
    page = Paginator(chosen, WHOLE if wanted.whole else PER_PAGE).get_page(wanted.page)
    skills = practised_skills()
    rows = [board_row(person, skills) for person in page.object_list]
    return BoardPage(skills, rows, page, overview(everybody, since))


def chosen_of(people: QuerySet[Person], wanted: BoardWanted, since: Since) -> QuerySet[Person]:
    if wanted.show == "idle":
        people = people.filter(is_idle(since))
    if wanted.show == "stuck":
        people = people.filter(summary__stuck__gt=0)
    if wanted.name:
        people = people.filter(name__icontains=wanted.name)
    if wanted.skill and wanted.state == State.NOT_BEGUN:
        return people.filter(Q(summary=None) | ~Q(summary__skills__has_key=wanted.skill))
    if wanted.skill and wanted.state:
        return people.filter(**{f"summary__skills__{wanted.skill}__state": wanted.state})
    return people


def is_idle(since: Since) -> Q:
    """No answer since then, or none ever. One from the future tells nothing of when it was."""
    practised = Q(summary__last_practised__range=since)
    return Q(summary=None) | Q(summary__last_practised=None) | ~practised


def board_row(person: Person, skills: list[Skill]) -> BoardRow:
    summary = getattr(person, "summary", None)
    known: dict[str, Any] = summary.skills if summary else {}
    return BoardRow(person, summary, [cell(skill, known.get(skill.slug)) for skill in skills])


def cell(skill: Skill, known: dict[str, Any] | None) -> Cell:
    if known is None:
        return Cell(skill, State.NOT_BEGUN)
    return Cell(skill, State(known["state"]), known["score"])


def overview(everybody: QuerySet[Person], since: Since) -> Overview:
    """Three queries."""
    numbers = everybody.aggregate(
        people=Count("pk"),
        idle=Count("pk", filter=is_idle(since)),
        stuck=Count("pk", filter=Q(summary__stuck__gt=0)),
    )
    idle = everybody.filter(is_idle(since)).order_by(*ORDERS["last"])[:NAMED]
    stuck = everybody.filter(summary__stuck__gt=0).order_by(*ORDERS["stuck"])[:NAMED]
    return Overview(
        people=numbers["people"],
        idle_number=numbers["idle"],
        stuck_number=numbers["stuck"],
        idle=list(idle),
        stuck=[stuck_on(person) for person in stuck],
    )


def stuck_on(person: Person) -> StuckOn:
    """The skill that they are stuck in, one with a belief behind it first."""
    skills = person.summary.skills
    stuck = [slug for slug, found in skills.items() if found["state"] == State.STUCK]
    slug = min(stuck, key=lambda each: (-skills[each]["times"], skills[each]["score"], each))
    belief = MISCONCEPTIONS.get(skills[slug]["belief"])
    sentence = belief.instructor if belief else "None of the last five answers was right."
    return StuckOn(person, SKILLS[slug], sentence, skills[slug]["times"])
