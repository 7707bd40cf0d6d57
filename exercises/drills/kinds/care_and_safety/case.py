"""A situation with people, machines and tape: four things to do, one of them right."""

from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass, field

from exercises.drills.judging.rules import Rule
from exercises.drills.setting.draw import Draw

LOCAL = "The workshop’s own rules and the maker’s instructions come first."
LICENSED = "What is behind a cover, and all mains wiring, is for licensed people only."
EMERGENCY = (
    "The workshop’s emergency plan comes first. Find the switch, the way out and the number "
    "before you need them."
)

Figures = Mapping[str, object]


def no_figures(_: Draw) -> Figures:
    return {}


@dataclass(frozen=True, slots=True, kw_only=True)
class CareCase:
    """`wish` is the question; `wrong` gives three other answers with what is dangerous in each.

    In texts `{tape}`, `{shot}`, `{person}` and `{room}` are drawn, and what `figures` draws.
    `held` says which misconceptions lead to a wrong answer. `source` says where the figures come
    from, or that it is common practice.
    """

    name: str
    story: str
    wish: str
    right: str
    because: str
    wrong: Mapping[str, str]
    rule: Rule
    source: str = "common practice"
    caution: str = LOCAL
    held: Mapping[str, frozenset[str]] = field(default_factory=dict)
    figures: Callable[[Draw], Figures] = no_figures

    @property
    def whys(self) -> dict[str, str]:
        """What is to be said of each answer, the right one first."""
        return {self.right: self.because, **self.wrong}

    @property
    def beliefs(self) -> list[str]:
        held = (belief for beliefs in self.held.values() for belief in sorted(beliefs))
        return list(dict.fromkeys(held))

    def believed(self, beliefs: Collection[str]) -> str:
        """What somebody with these beliefs answers."""
        held = frozenset(self.beliefs) & frozenset(beliefs)
        return next((text for text, led in self.held.items() if led == held), self.right)


def held_by(*beliefs: str) -> frozenset[str]:
    return frozenset(beliefs)


ANY_TAPE = held_by("any-tape-plays")
OTHER_RECORDER = held_by("recorders-alike")
