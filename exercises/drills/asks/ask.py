"""What every way of asking can do."""

from collections.abc import Sequence
from dataclasses import asdict, dataclass
from typing import Any, ClassVar, Self

Json = dict[str, Any]


class AnswerRefused(ValueError):
    """What was typed is no answer; the message is a sentence for the learner."""


@dataclass(frozen=True, kw_only=True)
class Ask:
    """One thing that is asked, under a `name` of its own; `legend` is the question."""

    form: ClassVar[str]

    name: str
    legend: str

    def read(self, typed: Sequence[str]) -> Any:
        """The answer, as JSON keeps it, from what a browser sent; or AnswerRefused."""
        raise TypeError(f"{type(self).__name__} does not say how it is read")

    def typed(self, answer: Any) -> list[str]:
        """What a browser sends for an answer: `read` turned round."""
        return [str(answer)]

    def in_words(self, answer: Any) -> str:
        """An answer as a page shows it later; AnswerRefused for what `read` can't give."""
        raise TypeError(f"{type(self).__name__} does not say how it is told")

    def every(self) -> Sequence[Any]:
        """Answers to try: all there are, or a few of too many."""
        raise TypeError(f"{type(self).__name__} does not say what could be answered")

    def count(self) -> int:
        """How many answers there are; 0 where they are typed, and nobody guesses one."""
        return len(self.every())

    def rows(self, typed: Sequence[str]) -> Sequence[Any]:
        """What a template with several fields draws, with what was typed in each."""
        return ()

    def as_json(self) -> Json:
        return {"form": self.form, **asdict(self)}

    @classmethod
    def of_json(cls, stored: Json) -> Self:
        raise TypeError(f"{cls.__name__} does not say how it is kept")


@dataclass(frozen=True, kw_only=True)
class Option:
    """One possible answer among several; `text` may be followed by a line of `hint`."""

    value: str
    text: str
    hint: str = ""


def no_answer(hint: str = "Choose one of those below.") -> AnswerRefused:
    return AnswerRefused(f"That is not one of the answers. {hint}")


def only(typed: Sequence[str]) -> str:
    """The one value that a browser sent, empty where it sent none."""
    if len(typed) > 1:
        raise AnswerRefused("Give one answer here, not several.")
    return typed[0].strip() if typed else ""
