from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, ClassVar

from exercises.drills.asks.ask import AnswerRefused, Ask, Json, no_answer, only


@dataclass(frozen=True, kw_only=True)
class Dial(Ask):
    """One of the `positions` of a control, each told in words; the answer is its index.

    `start` is where the control stands when it is shown.
    """

    form: ClassVar[str] = "dial"

    positions: tuple[str, ...]
    start: int

    @property
    def last(self) -> int:
        return len(self.positions) - 1

    def read(self, typed: Sequence[str]) -> int:
        text = only(typed)
        if not text:
            raise AnswerRefused("Set the control. Nothing has been recorded yet.")
        if not (text.isascii() and text.isdigit() and len(text) < 6):
            raise AnswerRefused(f"Give a whole number from 0 to {self.last}.")
        position = int(text)
        if position > self.last:
            raise AnswerRefused(f"The control goes from 0 to {self.last}.")
        return position

    def in_words(self, answer: Any) -> str:
        if type(answer) is not int or not 0 <= answer <= self.last:
            raise no_answer(f"The control goes from 0 to {self.last}.")
        return self.positions[answer]

    def every(self) -> Sequence[int]:
        return range(len(self.positions))

    @classmethod
    def of_json(cls, stored: Json) -> "Dial":
        return cls(
            name=stored["name"],
            legend=stored["legend"],
            positions=tuple(stored["positions"]),
            start=stored["start"],
        )
