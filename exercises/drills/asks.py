"""The ways of asking: what a learner may answer, and how what they typed is read.

    Ask
     ├── Choice   one of some options
     └── Dial     one position of a control

Each is drawn by the template `exercises/asks/<form>.html`. A new way of asking is a class
here, an entry in `FORMS` and a template.
"""

from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass
from typing import Any, ClassVar

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

    def in_words(self, answer: Any) -> str:
        """An answer that `read` gave, as a page shows it later."""
        raise TypeError(f"{type(self).__name__} does not say how it is told")

    def every(self) -> Sequence[Any]:
        """Answers to try: all there are, or a few of too many."""
        raise TypeError(f"{type(self).__name__} does not say what could be answered")

    def as_json(self) -> Json:
        return {"form": self.form, **asdict(self)}


@dataclass(frozen=True, kw_only=True)
class Option:
    """One possible answer to a `Choice`; `text` may be followed by a line of `hint`."""

    value: str
    text: str
    hint: str = ""


@dataclass(frozen=True, kw_only=True)
class Choice(Ask):
    """One of `options`; the answer is its value."""

    form: ClassVar[str] = "choice"

    options: tuple[Option, ...]

    def option(self, value: Any) -> Option:
        for option in self.options:
            if option.value == value:
                return option
        raise AnswerRefused("That is not one of the answers. Choose one of those below.")

    def read(self, typed: Sequence[str]) -> str:
        if not any(typed):
            raise AnswerRefused("Choose one answer. Nothing has been recorded yet.")
        return self.option(typed[0]).value

    def in_words(self, answer: Any) -> str:
        return self.option(answer).text

    def every(self) -> Sequence[str]:
        return [option.value for option in self.options]

    @classmethod
    def of_json(cls, stored: Json) -> "Choice":
        options = tuple(Option(**option) for option in stored["options"])
        return cls(name=stored["name"], legend=stored["legend"], options=options)


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
        if not any(typed):
            raise AnswerRefused("Set the control. Nothing has been recorded yet.")
        if not (typed[0].isascii() and typed[0].isdigit() and len(typed[0]) < 6):
            raise AnswerRefused(f"Give a whole number from 0 to {self.last}.")
        position = int(typed[0])
        if position > self.last:
            raise AnswerRefused(f"The control goes from 0 to {self.last}.")
        return position

    def in_words(self, answer: int) -> str:
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


FORMS: Mapping[str, type[Choice] | type[Dial]] = {each.form: each for each in (Choice, Dial)}


def ask_of_json(stored: Json) -> Ask:
    return FORMS[stored["form"]].of_json(stored)
