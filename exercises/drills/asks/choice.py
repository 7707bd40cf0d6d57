from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, ClassVar

from exercises.drills.asks.ask import AnswerRefused, Ask, Json, Option, no_answer, only


@dataclass(frozen=True, kw_only=True)
class Choice(Ask):
    """One of `options`; the answer is its value."""

    form: ClassVar[str] = "choice"

    options: tuple[Option, ...]

    def option(self, value: Any) -> Option:
        for option in self.options:
            if option.value == value:
                return option
        raise no_answer("Choose one of those below.")

    def read(self, typed: Sequence[str]) -> str:
        value = only(typed)
        if not value:
            raise AnswerRefused("Choose one answer. Nothing has been recorded yet.")
        return self.option(value).value

    def in_words(self, answer: Any) -> str:
        return self.option(answer).text

    def every(self) -> Sequence[str]:
        return [option.value for option in self.options]

    @classmethod
    def of_json(cls, stored: Json) -> "Choice":
        options = tuple(Option(**option) for option in stored["options"])
        return cls(name=stored["name"], legend=stored["legend"], options=options)
