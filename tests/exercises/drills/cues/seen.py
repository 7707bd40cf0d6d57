"""Parts that somebody has seen: what each rule gains on them, and what was usually right."""

from collections import Counter, defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from tests.exercises.drills.cues.part import Part, Pick, Whole
from tests.exercises.drills.cues.rules import guesses

COMMON = 0.25  # of the questions: a text that stands in so many is seen again and again


@dataclass(frozen=True)
class Seen:
    """Parts of questions; `counts` has how often each text is shown, in these and in all others."""

    parts: Sequence[Part]
    counts: Counter[str]

    @property
    def chance(self) -> float:
        return sum(part.chance for part in self.parts) / len(self.parts)

    @cached_property
    def gains(self) -> dict[str, dict[str, float]]:
        """By family and rule, in how many more parts it is right than by chance.

        What is given as a whole is wrong wherever a rule isn't named.
        """
        found: dict[str, dict[str, float]] = defaultdict(lambda: defaultdict(float))
        for part in self.parts:
            chance = part.chance
            for family, rule, share in guesses(part, self.counts):
                found[family][rule] += share - (0 if family == "whole" else chance)
        return found

    def best(self, family: str) -> str:
        """The rule that gains most here; "none" where none says anything."""
        rules = self.gains.get(family, {"none": 0.0})
        return max(rules, key=lambda rule: rules[rule])

    def share(self, family: str, rule: str, *, is_whole: bool) -> float:
        """How often a rule is right here."""
        gain = self.gains.get(family, {}).get(rule, 0) / len(self.parts)
        return gain if is_whole else self.chance + gain


def shown(parts: Sequence[Part]) -> Counter[str]:
    """How often each text is shown."""
    return Counter(text for part in parts if isinstance(part, Pick) for text in part.texts)


class Usual:
    """Among common texts, the one that was right most often where it could be picked."""

    def __init__(self, seen: Sequence[Part]) -> None:
        shown: dict[str, int] = defaultdict(int)
        right: dict[str, float] = defaultdict(float)
        for part in seen:
            if isinstance(part, Pick) and not part.is_known and part.start is None:
                for at, text in enumerate(part.texts):
                    shown[text] += 1
                    right[text] += at in part.right
        common = (text for text, count in shown.items() if count >= COMMON * len(seen))
        self.shares = {text: right[text] / shown[text] for text in common}

    def share(self, part: Part) -> float:
        """How likely it is right to go by what was right before."""
        if isinstance(part, Whole):
            return part.chance
        known = {at: self.shares[text] for at, text in enumerate(part.texts) if text in self.shares}
        if not known:
            return part.chance
        return part.share([at for at in known if known[at] == max(known.values())])
