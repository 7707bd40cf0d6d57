"""An effect that somebody asks for, and what people would answer to it."""

from collections.abc import Collection
from dataclasses import dataclass

from exercises.drills.rules import Rule


@dataclass(frozen=True, slots=True, kw_only=True)
class Reply:
    """An answer, who gives it (`held`: nobody in particular where None), and why not."""

    text: str
    why: str
    held: frozenset[str] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Effect:
    """`wish` is in words with names to be drawn: `{person}`, `{shot}`, `{talk}`, …

    `right` is true, and `replies` are the other three answers.
    """

    name: str
    wish: tuple[str, ...]
    right: str
    because: str
    replies: tuple[Reply, ...]
    rule: Rule

    def beliefs(self) -> list[str]:
        held = [belief for reply in self.replies for belief in sorted(reply.held or ())]
        return list(dict.fromkeys(held))

    def texts(self) -> list[str]:
        return [self.right, *(reply.text for reply in self.replies)]

    def believed(self, beliefs: Collection[str]) -> str:
        """What somebody with these beliefs answers."""
        held = frozenset(self.beliefs()) & frozenset(beliefs)
        return next((reply.text for reply in self.replies if reply.held == held), self.right)


def says(text: str, why: str, *held: str) -> Reply:
    """The reply of whoever holds all of these beliefs; of nobody in particular without any."""
    return Reply(text=text, why=why, held=frozenset(held) or None)
