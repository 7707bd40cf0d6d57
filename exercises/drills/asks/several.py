from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, ClassVar

from exercises.drills.asks.ask import AnswerRefused, Ask, Json, Option, no_answer


@dataclass(frozen=True, kw_only=True)
class Several(Ask):
    """Any of `options`, at least one; the answer is a list of their values, in their order.

    `alone` is the value of the option that means none of the others, if there is one.
    """

    form: ClassVar[str] = "several"

    options: tuple[Option, ...]
    alone: str = ""

    def read(self, typed: Sequence[str]) -> list[str]:
        ticked = [value for value in typed if value]
        if not ticked:
            raise AnswerRefused("Tick at least one. Nothing has been recorded yet.")
        self._check(ticked)
        if self.alone in ticked and len(set(ticked)) > 1:
            alone = next(each.text for each in self.options if each.value == self.alone)
            raise AnswerRefused(f"Tick either “{alone}” or others, not both.")
        return [option.value for option in self.options if option.value in ticked]

    def _check(self, values: Sequence[Any]) -> None:
        known = {option.value for option in self.options}
        if not all(isinstance(value, str) and value in known for value in values):
            raise no_answer()

    def typed(self, answer: list[str]) -> list[str]:
        return list(answer)

    def in_words(self, answer: Any) -> str:
        if not isinstance(answer, list) or not answer:
            raise no_answer()
        self._check(answer)
        return "; ".join(option.text for option in self.options if option.value in answer)

    def every(self) -> Sequence[list[str]]:
        """Each option alone, and all that go together."""
        values = [option.value for option in self.options]
        together = [value for value in values if value != self.alone]
        return [*([value] for value in values), *([together] if len(together) > 1 else [])]

    def count(self) -> int:
        """Every choice of some of them; one that goes with no other adds one only."""
        others = len(self.options) - bool(self.alone)
        return int(2**others) - 1 + bool(self.alone)

    @classmethod
    def of_json(cls, stored: Json) -> "Several":
        options = tuple(Option(**option) for option in stored["options"])
        return cls(
            name=stored["name"], legend=stored["legend"], options=options, alone=stored["alone"]
        )
