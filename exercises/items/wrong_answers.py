"""Reads: which wrong answers people chose in a kind of drill, and what each points at."""

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any, NamedTuple

from django.db.models import QuerySet

from course.cohorts.models import Person
from exercises.drills.kind import Kind
from exercises.mastery.misconceptions import MISCONCEPTIONS, Misconception
from exercises.models import RIGHT_NOW, Asked, Attempt

SHOWN = 4
AT_ONCE = 2000
OTHER = "Other answers, each its own"


class Part(NamedTuple):
    """What is alike in several wrong answers: a value chosen, or else what they point at."""

    ask: str
    value: str
    beliefs: tuple[str, ...]


@dataclass(frozen=True)
class Chosen:
    """A wrong answer in words, to what it was given and how often, and what it points at."""

    words: str
    to: str
    times: int
    beliefs: list[Misconception]


@dataclass
class Wrong:
    """The wrong answers of one situation: how many, and the parts that were chosen most."""

    answers: int = 0
    parts: Counter[Part] = field(default_factory=Counter)
    examples: dict[Part, int] = field(default_factory=dict)
    chosen: list[Chosen] = field(default_factory=list)

    @property
    def commonest(self) -> float:
        """The share of the wrong answers that are the same one."""
        same = [times for part, times in self.parts.items() if part.ask or part.beliefs]
        return max(same, default=0) / self.answers if self.answers else 0.0

    def count(self, parts: Iterable[Part], asked: int) -> None:
        self.answers += 1
        for part in parts:
            self.parts[part] += 1
            self.examples.setdefault(part, asked)


def wrong_answers(kind: Kind, people: QuerySet[Person]) -> dict[str, Wrong]:
    """By situation; two queries. Nothing of what an instructor judges, which is never alike."""
    found: dict[str, Wrong] = defaultdict(Wrong)
    if kind.by_hand:
        return {}
    rows = (
        Attempt.objects.judged()
        .filter(person__in=people, drill=kind.slug)
        .order_by("pk")
        .values_list(
            "asked",
            "situation",
            RIGHT_NOW,
            "answer",
            "misconceptions",
            "asked__question__right",
            "asked__question__reveals",
        )
    )
    for asked, situation, right_now, answer, beliefs, right, reveals in rows.iterator(AT_ONCE):
        if not right_now:
            found[situation].count(parts_of(answer, beliefs, right, reveals), asked)
    put_in_words(found.values())
    return dict(found)


def parts_of(
    answer: dict[str, Any],
    beliefs: list[str],
    right: dict[str, Any],
    reveals: dict[str, dict[str, list[str]]],
) -> Iterator[Part]:
    """The wrong parts of an answer that other people can have chosen too.

    Ranges, tables and numbers are hardly ever alike: such answers go by what they point at.
    """
    wrong = {name: value for name, value in answer.items() if value != right.get(name)}
    chosen = {name: value for name, value in wrong.items() if isinstance(value, str)}
    for name, value in chosen.items():
        yield Part(name, value, tuple(reveals.get(name, {}).get(value, ())))
    if not chosen:
        yield Part("", "", tuple(sorted(beliefs)))


def put_in_words(wrong: Iterable[Wrong]) -> None:
    """Say of each situation what was chosen most, by the questions that it was an answer to."""
    shown = [(each, part) for each in wrong for part, _ in each.parts.most_common(SHOWN)]
    examples = {each.examples[part] for each, part in shown if part.ask}
    questions = {each.pk: each.as_question() for each in Asked.objects.filter(pk__in=examples)}
    for each, part in shown:
        beliefs = [MISCONCEPTIONS[belief] for belief in part.beliefs if belief in MISCONCEPTIONS]
        words, to = "" if beliefs else OTHER, ""
        if part.ask:
            asks = {ask.name: ask for ask in questions[each.examples[part]].asks}
            words, to = asks[part.ask].in_words(part.value), asks[part.ask].legend
        each.chosen.append(Chosen(words, to, each.parts[part], beliefs))
