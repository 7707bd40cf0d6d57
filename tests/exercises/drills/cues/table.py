"""The cue table: for each part of a kind, the best that blind guessing comes to."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from math import sqrt

from exercises.drills.question import Question
from tests.exercises.drills.cues.part import Part, Whole, parts
from tests.exercises.drills.cues.rules import FAMILIES
from tests.exercises.drills.cues.seen import Seen, Usual, shown

MORE = 0.05  # than by chance
ENOUGH = 500  # asked so often, a share is held to the line as it was measured
FEW = 60  # asked less often, it says nothing


@dataclass(frozen=True, order=True)
class Line:
    """What a part of a kind gives away: the best rule, and how often it is right."""

    gain: float
    kind: str
    part: str
    count: int
    chance: float
    share: float
    rule: str

    @property
    def error(self) -> float:
        """The standard error of the share."""
        share = min(1.0, max(0.0, self.share))
        return sqrt(share * (1 - share) / self.count)

    @property
    def is_over(self) -> bool:
        """Whether it gives the answer away; of few, by more than its standard error."""
        return self.gain > MORE + (0 if self.count >= ENOUGH else self.error)

    def __str__(self) -> str:
        mark = "  <<" if self.is_over else ""
        return (
            f"{self.kind:18} {self.part:28} {self.count:6} {self.chance:6.3f} {self.share:6.3f}"
            f"  {self.rule}{mark}"
        )


HEAD = f"{'kind':18} {'part':28} {'asked':>6} chance  share  best rule"


def lines(slug: str, questions: Iterable[Question]) -> Iterator[Line]:
    """A rule is chosen on every other question and measured on the others, both ways round.

    So what a rule gains by chance isn't counted. One rule of each family is tried, and the line is
    of the best. The standard error of a share of 0.2 is 0.013 in 1,000, 0.018 in 500.
    """
    halves: dict[str, tuple[list[Part], list[Part]]] = defaultdict(lambda: ([], []))
    for number, question in enumerate(questions):
        for part in parts(question):
            halves[part.name][number % 2].append(part)
    for name, (one, other) in halves.items():
        one, other = with_chance(one, other)
        if min(len(one), len(other)) >= FEW // 2:
            yield line(slug, name, one, other)


def with_chance(one: list[Part], other: list[Part]) -> tuple[list[Part], list[Part]]:
    ever = len({part.right for part in (*one, *other)})

    def known(part: Part) -> Part:
        if isinstance(part, Whole) and not part.chance:
            return replace(part, chance=1 / ever)
        return part

    return [known(part) for part in one], [known(part) for part in other]


def line(slug: str, name: str, one: Sequence[Part], other: Sequence[Part]) -> Line:
    counts = shown([*one, *other])
    halves = Seen(one, counts), Seen(other, counts)
    ways = zip(measured(*halves), measured(*reversed(halves)), strict=True)
    count = len(one) + len(other)
    found = []
    for (share, rule), (back_share, back) in ways:
        rules = rule if rule == back else f"{rule}; {back}"
        found.append(((share * len(other) + back_share * len(one)) / count, rules))
    return best(slug, name, [*one, *other], found)


def best(slug: str, name: str, parts: Sequence[Part], found: list[tuple[float, str]]) -> Line:
    chance = sum(part.chance for part in parts) / len(parts)
    share, rule = max(found)
    return Line(share - chance, slug, name, len(parts), chance, share, rule)


def measured(chosen_on: Seen, others: Seen) -> list[tuple[float, str]]:
    """For each family, how often the best rule on some parts is right on others."""
    usual = Usual(chosen_on.parts)
    by_usual = sum(map(usual.share, others.parts)) / len(others.parts)
    return [*by_rule(chosen_on, others), (by_usual, "usual text")]


def by_rule(chosen_on: Seen, others: Seen) -> Iterator[tuple[float, str]]:
    for family in FAMILIES:
        rule = chosen_on.best(family)
        is_whole = family == "whole" and family in chosen_on.gains
        yield others.share(family, rule, is_whole=is_whole), rule


def whole_lines(slug: str, questions: Iterable[Question]) -> Iterator[Line]:
    """The best rule is chosen on all questions, and measured on the same.

    So what a rule gains by chance is counted too: for kinds of which few texts say it all.
    """
    found: dict[str, list[Part]] = defaultdict(list)
    for question in questions:
        for part in parts(question):
            found[part.name].append(part)
    for name, those in found.items():
        known, _ = with_chance(those, [])
        seen = Seen(known, shown(known))
        yield best(slug, name, known, list(by_rule(seen, seen)))
