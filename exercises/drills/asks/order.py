from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from math import perm
from typing import Any, ClassVar

from exercises.drills.asks.ask import AnswerRefused, Ask, Json, Option, no_answer

LEFT_OUT = "0"


@dataclass(frozen=True, kw_only=True)
class Order(Ask):
    """The `steps` put in order; the answer lists the values of those that are done.

    A browser sends a position for each step, in the order of `steps`; "0" leaves one out.
    """

    form: ClassVar[str] = "order"

    steps: tuple[Option, ...]

    @property
    def positions(self) -> range:
        return range(1, len(self.steps) + 1)

    def read(self, typed: Sequence[str]) -> list[str]:
        if len(typed) != len(self.steps) or not all(typed):
            raise AnswerRefused(
                "Give every step a position, or leave it out. Nothing has been recorded yet."
            )
        if not set(typed) <= {LEFT_OUT, *map(str, self.positions)}:
            raise AnswerRefused(f"Give each step a whole number from 1 to {len(self.steps)}.")
        chosen = [int(position) for position in typed if position != LEFT_OUT]
        twice = [position for position, count in Counter(chosen).items() if count > 1]
        if twice:
            raise AnswerRefused(
                f"Two steps stand at position {min(twice)}. Give each a position of its own."
            )
        if not chosen:
            raise AnswerRefused("Every step is left out. Give at least one a position.")
        placed = zip(typed, self.steps, strict=True)
        done = [(int(place), step.value) for place, step in placed if place != LEFT_OUT]
        return [value for _, value in sorted(done)]

    def typed(self, answer: list[str]) -> list[str]:
        places = {value: str(place) for place, value in enumerate(answer, 1)}
        return [places.get(step.value, LEFT_OUT) for step in self.steps]

    def in_words(self, answer: Any) -> str:
        texts = {step.value: step.text for step in self.steps}
        known = isinstance(answer, list) and all(isinstance(value, str) for value in answer)
        if not known or not answer or not set(answer) <= set(texts):
            raise no_answer("Give each step a position.")
        if len(set(answer)) < len(answer):
            raise no_answer("Each step may stand at one place only.")
        return " ".join(f"{n}. {texts[value]}" for n, value in enumerate(answer, 1))

    def every(self) -> Sequence[list[str]]:
        """The order shown, its reverse, and a few more."""
        values = [step.value for step in self.steps]
        return [values, values[::-1], values[1:] + values[:1], values[:-1]]

    def count(self) -> int:
        """Every order of every number of steps."""
        return sum(perm(len(self.steps), chosen) for chosen in self.positions)

    def rows(self, typed: Sequence[str]) -> Sequence[tuple[Option, str]]:
        filled = [*typed, *[""] * len(self.steps)]
        return list(zip(self.steps, filled, strict=False))

    @classmethod
    def of_json(cls, stored: Json) -> "Order":
        steps = tuple(Option(**step) for step in stored["steps"])
        return cls(name=stored["name"], legend=stored["legend"], steps=steps)
