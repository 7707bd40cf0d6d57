"""Reads: what the answers of some people say about the drills, by kind and by situation."""

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import NamedTuple

from django.db.models import QuerySet

from course.cohorts.models import Person
from exercises.drills.kind import Kind
from exercises.items.wrong_answers import Wrong
from exercises.mastery.items import (
    ENOUGH,
    Answers,
    Item,
    complete,
    discriminations,
    flags_of,
    kr20,
    typical,
    usual_set,
)
from exercises.models import RIGHT_NOW, Attempt

AT_ONCE = 2000
Kinds = Mapping[str, Kind]  # by slug, in the order in which they are shown


class Given(NamedTuple):
    """An answer, as far as it is counted."""

    person: int
    drill: str
    situation: str
    right: bool
    seconds: float


@dataclass(frozen=True)
class Line:
    """An item as the page shows it."""

    item: Item
    title: str
    flags: list[str]
    kind: Kind
    wrong: Wrong | None = None

    @property
    def right_percent(self) -> int:
        return round(100 * self.item.right)

    @property
    def first_percent(self) -> int:
        return round(100 * self.item.first)

    @property
    def telling(self) -> str:
        """The discrimination; empty where there is none."""
        found = self.item.discrimination
        return "" if found is None else f"{found:.2f}".replace("-", "−")

    @property
    def time(self) -> str:
        """The median time in words."""
        minutes, seconds = divmod(round(self.item.seconds), 60)
        return f"{minutes} min {seconds:02} s" if minutes else f"{seconds} s"


@dataclass(frozen=True)
class FixedSet:
    """Kinds that the same people have all answered, and how far a set of them can be trusted."""

    kinds: list[Kind]
    people: int
    kr20: float | None


def given_by(people: QuerySet[Person], kinds: Kinds) -> list[Given]:
    """Every answer of theirs that counts, in order; one query."""
    rows = (
        Attempt.objects.judged()
        .filter(person__in=people, drill__in=list(kinds))
        .order_by("pk")
        .values_list("person", "drill", "situation", RIGHT_NOW, "asked_at", "answered_at")
    )
    return [
        Given(person, drill, situation, right, seconds_between(asked, answered))
        for person, drill, situation, right, asked, answered in rows.iterator(chunk_size=AT_ONCE)
    ]


def seconds_between(asked: datetime, answered: datetime) -> float:
    """Nought where the clock was set back between them."""
    return max(0.0, (answered - asked).total_seconds())


def first_answers(given: Iterable[Given], item_of: Callable[[Given], str]) -> Answers:
    """By person and item, whether the first answer was right."""
    found: dict[int, dict[str, bool]] = defaultdict(dict)
    for each in given:
        found[each.person].setdefault(item_of(each), each.right)
    return found


def by_kind(given: Given) -> str:
    return given.drill


def by_situation(given: Given) -> str:
    return f"{given.drill}/{given.situation}"


def items_in(
    given: list[Given], item_of: Callable[[Given], str], commonest: dict[str, float]
) -> list[Item]:
    """The items that were answered, in the order of their first answers."""
    answers = first_answers(given, item_of)
    telling = discriminations(answers)
    groups: dict[str, list[Given]] = defaultdict(list)
    for each in given:
        groups[item_of(each)].append(each)
    firsts = {item: [g[item] for g in answers.values() if item in g] for item in groups}
    return [
        Item(
            slug=item,
            answers=len(group),
            people=len(firsts[item]),
            right=sum(each.right for each in group) / len(group),
            first=sum(firsts[item]) / len(firsts[item]),
            discrimination=telling[item],
            seconds=typical(each.seconds for each in group),
            commonest=commonest.get(item, 0.0),
        )
        for item, group in groups.items()
    ]


def kind_lines(given: list[Given], kinds: Kinds) -> list[Line]:
    """A line for each kind that was answered, in the kinds' order."""
    found = {item.slug: item for item in items_in(given, by_kind, {})}
    usual = typical(item.seconds for item in found.values())
    items = [(kind, found[slug]) for slug, kind in kinds.items() if slug in found]
    return [Line(item, kind.title, flags_of(item, usual), kind) for kind, item in items]


def fixed_set(given: list[Given], slugs: list[str], kinds: Kinds) -> FixedSet:
    """The set of those kinds; where none is named, of those that enough people have answered."""
    answers = first_answers(given, by_kind)
    chosen = [slug for slug in kinds if slug in slugs] or usual_set(kinds, answers)
    rows = complete(chosen, answers)
    enough = len(rows) >= ENOUGH
    return FixedSet([kinds[slug] for slug in chosen], len(rows), kr20(rows) if enough else None)


def situation_lines(kind: Kind, given: list[Given], wrong: dict[str, Wrong]) -> list[Line]:
    """A line for each situation of a kind that was answered, with the wrong answers to it."""
    commonest = {f"{kind.slug}/{slug}": each.commonest for slug, each in wrong.items()}
    items = [each for each in items_in(given, by_situation, commonest) if in_kind(each, kind)]
    usual = typical(each.seconds for each in items)
    lines = [situation_line(each, kind, usual, wrong) for each in items]
    return sorted(lines, key=lambda line: line.title)


def in_kind(item: Item, kind: Kind) -> bool:
    return item.slug.startswith(f"{kind.slug}/")


def situation_line(item: Item, kind: Kind, usual: float, wrong: dict[str, Wrong]) -> Line:
    situation = item.slug.removeprefix(f"{kind.slug}/")
    title = situation.replace("-", " ").capitalize()
    return Line(item, title, flags_of(item, usual), kind, wrong.get(situation))
