import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, ClassVar

from exercises.drills.asks.ask import AnswerRefused, Ask, Json, no_answer, only

NUMBER = re.compile(r"[-−+]?[0-9]{1,9}([.,][0-9]{1,9})?")


@dataclass(frozen=True, kw_only=True)
class Amount(Ask):
    """A number of `unit`, from `least` to `most`, with up to so many `decimals`.

    `signed` numbers are told with their sign.
    """

    form: ClassVar[str] = "amount"

    unit: str
    least: float = 0
    most: float = 1_000_000
    decimals: int = 0
    signed: bool = False

    @property
    def limits(self) -> str:
        return f"from {self.told(self.least)} to {self.told(self.most)}"

    def told(self, number: float) -> str:
        sign = "+" if self.signed and number > 0 else ""
        return f"{sign}{number:,.{self.decimals}f}".replace("-", "−")

    @property
    def _form(self) -> str:
        if not self.decimals:
            return "a whole number"
        return f"no more than {self.decimals} decimal{'' if self.decimals == 1 else 's'}"

    def read(self, typed: Sequence[str]) -> float:
        text = only(typed)
        if not text:
            raise AnswerRefused("Give a number. Nothing has been recorded yet.")
        if not NUMBER.fullmatch(text):
            kind = "a number, such as 12.5" if self.decimals else "a whole number, such as 12"
            raise AnswerRefused(f"Give {kind}.")
        number = float(text.replace("−", "-").replace(",", "."))
        if number != round(number, self.decimals):
            raise AnswerRefused(f"Give {self._form}.")
        if not self.least <= number <= self.most:
            raise AnswerRefused(f"Give a number {self.limits}.")
        return self._rounded(number)

    def _rounded(self, number: float) -> float:
        return round(number, self.decimals) if self.decimals else int(number)

    def typed(self, answer: float) -> list[str]:
        return [f"{answer:.{self.decimals}f}"]

    def in_words(self, answer: Any) -> str:
        if type(answer) not in (int, float) or not self.least <= answer <= self.most:
            raise no_answer()
        return f"{self.told(answer)} {self.unit}"

    def every(self) -> Sequence[float]:
        return [self._rounded(self.least), self._rounded(self.most)]

    def count(self) -> int:
        return 0

    @classmethod
    def of_json(cls, stored: Json) -> "Amount":
        return cls(**{name: value for name, value in stored.items() if name != "form"})
