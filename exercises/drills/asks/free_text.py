from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, ClassVar

from exercises.drills.asks.ask import AnswerRefused, Ask, Json, no_answer, only


@dataclass(frozen=True, kw_only=True)
class FreeText(Ask):
    """Some sentences, `least` to `most` characters; `rubric` is what the reader looks for."""

    form: ClassVar[str] = "free_text"

    least: int
    most: int
    rubric: tuple[str, ...]

    @property
    def limits(self) -> str:
        return f"{self.least:,} to {self.most:,} characters"

    def read(self, typed: Sequence[str]) -> str:
        text = "\n".join(only(typed).splitlines())
        if not text:
            raise AnswerRefused("Write an answer. Nothing has been recorded yet.")
        if "\0" in text:
            raise AnswerRefused("There is a character in it that can’t be kept. Type it again.")
        if not self.least <= len(text) <= self.most:
            raise AnswerRefused(f"Write {self.limits}; there are {len(text):,}.")
        return text

    def in_words(self, answer: Any) -> str:
        if not (isinstance(answer, str) and self.least <= len(answer) <= self.most):
            raise no_answer(f"Write {self.limits}.")
        return answer

    def every(self) -> Sequence[str]:
        return [text.ljust(self.least, "…") for text in ("It depends", "I don’t know yet")]

    def count(self) -> int:
        return 0

    @classmethod
    def of_json(cls, stored: Json) -> "FreeText":
        kept = {name: value for name, value in stored.items() if name != "form"}
        return cls(**{**kept, "rubric": tuple(stored["rubric"])})
