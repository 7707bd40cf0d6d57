"""An effect that somebody asks for, and what people would answer to it."""

from collections.abc import Collection, Mapping
from dataclasses import dataclass, field

from exercises.drills.judging.rules import Rule
from exercises.drills.setting.draw import Draw

OPTIONS = 4


@dataclass(frozen=True, slots=True, kw_only=True)
class Effect:
    """`wish` is in words with names to be drawn: `{person}`, `{shot}`, `{talk}`, …

    `right` is true, and `because` says why; `wrong` gives three other answers or more, with what
    is against each. `held` says which of them somebody gives who holds a belief. `skill` is what
    it practises, where that is not what its rule is about.
    """

    name: str
    wish: str
    right: str
    because: str
    wrong: Mapping[str, str]
    rule: Rule
    held: Mapping[str, str] = field(default_factory=dict)
    skill: str = ""

    @property
    def beliefs(self) -> list[str]:
        return list(self.held.values())

    @property
    def whys(self) -> dict[str, str]:
        """What is to be said of each answer, the right one first."""
        return {self.right: self.because, **self.wrong}

    def texts(self, draw: Draw) -> list[str]:
        """The right answer and three others, shuffled; what believers answer is among them."""
        others = draw.shuffled([text for text in self.wrong if text not in self.held])
        return draw.shuffled([self.right, *[*self.held, *others][: OPTIONS - 1]])

    def believed(self, beliefs: Collection[str]) -> str:
        """What somebody with these beliefs answers."""
        return next((text for text, belief in self.held.items() if belief in beliefs), self.right)
