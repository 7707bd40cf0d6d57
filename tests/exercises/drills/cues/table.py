"""The cue table: for each part of a kind, the best that blind guessing comes to."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from math import sqrt

from exercises.drills.kind import Question
from tests.exercises.drills.cues.part import Part, Whole, parts
from tests.exercises.drills.cues.rules import Usual, guesses

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
    count = len(one) + len(other)
    chance = sum(part.chance for part in (*one, *other)) / count
    ways = zip(measured(one, other), measured(other, one), strict=True)
    found = []
    for (rule, share), (back, back_share) in ways:
        rules = rule if rule == back else f"{rule}; {back}"
        found.append(((share * len(other) + back_share * len(one)) / count, rules))
    share, rule = max(found)
    return Line(share - chance, slug, name, count, chance, share, rule)


def measured(chosen_on: Sequence[Part], others: Sequence[Part]) -> list[tuple[str, float]]:
    """For each family, the best rule on some parts, and how often it is right on others."""
    tried, held = gains(chosen_on), gains(others)
    chance = sum(part.chance for part in others) / len(others)
    found = []
    for family in FAMILIES:
        rules = tried.get(family, {"none": 0.0})
        best = max(rules, key=lambda rule: rules[rule])
        least = 0 if family == "whole" and family in tried else chance
        found.append((best, least + held.get(family, {}).get(best, 0) / len(others)))
    usual = Usual(chosen_on)
    return [*found, ("usual text", sum(map(usual.share, others)) / len(others))]


FAMILIES = ("whole", "place", "length", "word", "number", "page")


def gains(seen: Sequence[Part]) -> dict[str, dict[str, float]]:
    """By family and rule, in how many more parts it is right than by chance.

    What is given as a whole is wrong wherever a rule isn't named.
    """
    found: dict[str, dict[str, float]] = defaultdict(lambda: defaultdict(float))
    for part in seen:
        for family, rule, share in guesses(part):
            found[family][rule] += share - (0 if family == "whole" else part.chance)
    return found
