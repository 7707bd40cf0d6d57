"""A situation with people, machines and tape: four things to do, one of them right."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from exercises.drills.rules import Rule

LOCAL = "The workshop’s own rules and the maker’s instructions come first."
LICENSED = "What is behind a cover, and all mains wiring, is for licensed people only."


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """`wish` is the question; `wrong` gives three other answers with what is dangerous in each.

    `held` names the misconception behind one of them, where there is one. `source` says where
    the figures come from, or that it is common practice.
    """

    story: str
    wish: str
    right: str
    because: str
    wrong: dict[str, str]
    rule: Rule
    source: str = "common practice"
    caution: str = LOCAL
    held: Mapping[str, str] = field(default_factory=dict)

    def whys(self) -> dict[str, str]:
        """What is to be said of each answer."""
        return {self.right: self.because, **self.wrong}

    def texts(self) -> list[str]:
        return [self.right, *self.wrong]
