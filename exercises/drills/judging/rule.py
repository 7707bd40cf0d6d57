"""What a rule is that feedback names."""

from dataclasses import dataclass

from exercises.drills.asks import Json
from exercises.tape import Bench


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule:
    """A sentence to go by, the skill it belongs to, and the place in a lesson that teaches it.

    `gapless` is the sentence for a bench whose assemble wipes nothing past its end.
    """

    text: str
    skill: str
    lesson: str
    section: str
    gapless: str = ""

    def at(self, bench: Bench) -> Json:
        """The rule as it holds at a bench, as feedback shows it."""
        gapless = self.gapless and not bench.erase_gap
        return {**self.as_json(), "text": self.gapless if gapless else self.text}

    def as_json(self) -> Json:
        return {name: getattr(self, name) for name in ("text", "skill", "lesson", "section")}
