"""A procedure as rules of precedence rather than one order, and as a believer would do it."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from itertools import combinations

from exercises.drills.rules import Rule


@dataclass(frozen=True, slots=True)
class Before:
    """`first` comes before `then`, and why. Breaking a `critical` one spoils a tape."""

    first: str
    then: str
    why: str
    critical: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Flaw:
    """What somebody with a belief does: leaves out a step, adds one, or does one too late.

    `step` is added or comes right after `after`; without `after` it is left out.
    """

    belief: str
    step: str
    after: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Procedure:
    """Steps in one order that works, decoys with the reason against them, and the rules.

    `task` tells what is to be done. In texts, `{tape}`, `{shot}` and `{sound}` are drawn.
    """

    name: str
    task: str
    steps: dict[str, str]
    rules: tuple[Before, ...]
    flaws: tuple[Flaw, ...]
    rule: Rule
    decoys: dict[str, tuple[str, str]]

    @property
    def order(self) -> list[str]:
        return list(self.steps)

    def believed(self, beliefs: Collection[str]) -> list[str]:
        """The order of somebody with these beliefs; without any, one that works."""
        order = self.order
        for flaw in self.flaws:
            if flaw.belief in beliefs:
                order = [step for step in order if step != flaw.step]
                if flaw.after:
                    order.insert(order.index(flaw.after) + 1, flaw.step)
        return order

    def shown_by(self, order: Sequence[str]) -> list[str]:
        """The beliefs that an order points at."""
        return [flaw.belief for flaw in self.flaws if self._shows(flaw, order)]

    def _shows(self, flaw: Flaw, order: Sequence[str]) -> bool:
        if not flaw.after:
            return flaw.step not in order
        if flaw.step in self.decoys:
            return flaw.step in order
        both = flaw.step in order and flaw.after in order
        return both and order.index(flaw.step) > order.index(flaw.after)

    def broken(self, order: Sequence[str]) -> list[Before]:
        """The rules that the steps of an order break."""
        return [
            rule
            for rule in self.rules
            if rule.first in order
            and rule.then in order
            and order.index(rule.first) > order.index(rule.then)
        ]

    def missing(self, order: Sequence[str]) -> list[str]:
        return [step for step in self.steps if step not in order]

    def needless(self, order: Sequence[str]) -> list[str]:
        return [step for step in order if step in self.decoys]

    def is_critical(self, step: str) -> bool:
        """Whether a tape is spoiled where the step is missing."""
        return any(rule.critical and rule.first == step for rule in self.rules)

    def precedes(self) -> frozenset[tuple[str, str]]:
        """All pairs that follow from the rules."""
        pairs = {(rule.first, rule.then) for rule in self.rules}
        while True:
            more = {(a, d) for a, b in pairs for c, d in pairs if b == c} - pairs
            if not more:
                return frozenset(pairs)
            pairs |= more

    def out_of_place(self, order: Sequence[str]) -> list[str]:
        """The fewest steps to move: those outside the longest run that is in order."""
        steps = [step for step in order if step in self.steps]
        pairs = self.precedes()
        clashes = [(a, b) for a, b in combinations(steps, 2) if (b, a) in pairs]
        for count in range(len(steps)):
            for moved in combinations(steps, count):
                if all(a in moved or b in moved for a, b in clashes):
                    return list(moved)
        return steps

    def score(self, order: Sequence[str]) -> int:
        """The share of what is asked for, in hundredths; 0 where a tape would be spoiled.

        Each rule counts once, each step that must be there and each that must not.
        """
        broken, missing = self.broken(order), self.missing(order)
        lost = [rule for rule in self.rules if {rule.first, rule.then} & set(missing)]
        if any(rule.critical for rule in broken) or any(map(self.is_critical, missing)):
            return 0
        wrong = len(broken) + len(lost) + len(missing) + len(self.needless(order))
        whole = len(self.rules) + len(self.steps) + len(self.decoys)
        return (200 * (whole - wrong) + whole) // (2 * whole)
