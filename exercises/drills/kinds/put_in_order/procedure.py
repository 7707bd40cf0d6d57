"""A procedure as rules of precedence rather than one order, and as a believer would do it."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import asdict, dataclass, field, replace
from itertools import combinations
from typing import Self

from exercises.drills.asks import Json
from exercises.drills.judging.rules import Rule
from exercises.drills.setting.phrases import begun


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

    `step` is added or comes right after `after`, or takes the place of `instead`; without
    either it is left out.
    """

    belief: str
    step: str
    after: str = ""
    instead: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Procedure:
    """Steps in one order that works, decoys with the reason against them, and the rules.

    `task` tells what is to be done. In texts, `{tape}`, `{shot}` and `{sound}` are drawn.
    `needs` says what is against leaving out a step, where no rule does.
    """

    name: str
    task: str
    steps: dict[str, str]
    rules: tuple[Before, ...]
    flaws: tuple[Flaw, ...]
    rule: Rule
    decoys: dict[str, tuple[str, str]]
    needs: Mapping[str, str] = field(default_factory=dict)

    @property
    def texts(self) -> dict[str, str]:
        """The text of every step and decoy."""
        return {**self.steps, **{step: text for step, (text, _) in self.decoys.items()}}

    def told(self, words: Json) -> Self:
        """The same with these names in its texts."""
        return replace(
            self,
            task=". ".join(begun(each) for each in self.task.format(**words).split(". ")),
            steps={step: text.format(**words) for step, text in self.steps.items()},
            decoys={step: (text.format(**words), why) for step, (text, why) in self.decoys.items()},
        )

    def as_json(self) -> Json:
        """What is kept with a question, to judge its answer by."""
        return {
            "name": self.name,
            "task": self.task,
            "steps": self.steps,
            "rules": [asdict(rule) for rule in self.rules],
            "flaws": [asdict(flaw) for flaw in self.flaws],
            "rule": self.rule.as_json(),
            "decoys": {step: list(decoy) for step, decoy in self.decoys.items()},
            "needs": dict(self.needs),
        }

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        return cls(
            **{
                **stored,
                "rules": tuple(Before(**rule) for rule in stored["rules"]),
                "flaws": tuple(Flaw(**flaw) for flaw in stored["flaws"]),
                "rule": Rule(**stored["rule"]),
                "decoys": {step: (text, why) for step, (text, why) in stored["decoys"].items()},
            }
        )

    @property
    def order(self) -> list[str]:
        return list(self.steps)

    def believed(self, beliefs: Collection[str]) -> list[str]:
        """The order of somebody with these beliefs; without any, one that works."""
        order = self.order
        for flaw in self.flaws:
            if flaw.belief in beliefs:
                order = _done(flaw, order)
        return order

    def shown_by(self, order: Sequence[str]) -> list[str]:
        """The beliefs that an order points at."""
        return [flaw.belief for flaw in self.flaws if self._shows(flaw, order)]

    def _shows(self, flaw: Flaw, order: Sequence[str]) -> bool:
        if flaw.step in self.decoys:
            return flaw.step in order
        if not flaw.after:
            return flaw.step not in order
        both = flaw.step in order and flaw.after in order
        return both and order.index(flaw.step) > order.index(flaw.after)

    def why_not_without(self, step: str) -> str:
        """What is against leaving out a step."""
        return next(
            (rule.why for rule in self.rules if rule.first == step), self.needs.get(step, "")
        )

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


def _done(flaw: Flaw, order: Sequence[str]) -> list[str]:
    """The order of somebody who does as the flaw says."""
    if flaw.instead in order:
        return [flaw.step if step == flaw.instead else step for step in order]
    left = [step for step in order if step != flaw.step]
    if flaw.after or flaw.instead:
        at = left.index(flaw.after) + 1 if flaw.after in left else len(left)
        left.insert(at, flaw.step)
    return left
