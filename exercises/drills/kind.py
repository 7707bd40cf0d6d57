"""What a kind of drill is: how a question is made, what is asked, how an answer is judged.

Everything here is pure: no request, no database. Questions and verdicts turn into
JSON-able dicts, because they are stored with the attempt and never made again.
"""

from collections.abc import Callable, Mapping
from dataclasses import asdict, dataclass, field
from typing import Any, Self

Json = dict[str, Any]


@dataclass(frozen=True, kw_only=True)
class Option:
    """One possible answer to an `Ask`; `text` may be followed by a line of `hint`."""

    value: str
    text: str
    hint: str = ""


@dataclass(frozen=True, kw_only=True)
class Ask:
    """One thing that the learner answers by choosing one of `options`."""

    name: str
    legend: str
    options: tuple[Option, ...]

    def option(self, value: str | None) -> Option:
        """The option of this value; ValueError, with a sentence, where there is none."""
        for option in self.options:
            if option.value == value:
                return option
        if value is None:
            raise ValueError(f"There is no answer to “{self.legend}”")
        raise ValueError(f"{value!r} is not one of the answers to “{self.legend}”")


@dataclass(frozen=True, kw_only=True)
class Question:
    """A question as asked.

    `shown` is all that a page may use before the answer. `right` (by ask), `reveals` (by
    ask and wrong option: the misconceptions that it points at) and `key`, what else `grade`
    needs, stay on the server. `situation` names what the question is about, for counts;
    `skill` is the one that it practises.
    """

    situation: str
    skill: str
    asks: tuple[Ask, ...]
    shown: Json
    right: Mapping[str, str]
    reveals: Mapping[str, Mapping[str, list[str]]]
    key: Json

    def as_json(self) -> Json:
        return asdict(self)

    def chosen(self, answer: Mapping[str, str]) -> dict[str, Option]:
        """The option chosen for each ask, by the ask's name.

        Raises ValueError, with a sentence, where one is missing, unknown or not asked for.
        """
        for name in answer:
            if name not in {ask.name for ask in self.asks}:
                raise ValueError(f"Nothing named {name!r} is asked.")
        return {ask.name: ask.option(answer.get(ask.name)) for ask in self.asks}

    def revealed(self, answer: Mapping[str, str]) -> tuple[str, ...]:
        """The misconceptions that the wrong parts of an answer point at, each once."""
        found = (
            belief
            for name, value in answer.items()
            for belief in self.reveals.get(name, {}).get(value, ())
        )
        return tuple(dict.fromkeys(found))

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        asks = tuple(
            Ask(
                name=ask["name"],
                legend=ask["legend"],
                options=tuple(Option(**option) for option in ask["options"]),
            )
            for ask in stored["asks"]
        )
        return cls(**{**stored, "asks": asks})


@dataclass(frozen=True, kw_only=True)
class Verdict:
    """How an answer was judged: `score` in hundredths, 100 when right.

    `misconceptions` are ids of `exercises.mastery`; `feedback` is what the kind's
    template shows once the answer is in.
    """

    right: bool
    score: int
    misconceptions: tuple[str, ...] = ()
    feedback: Json = field(default_factory=dict)


@dataclass(frozen=True, kw_only=True)
class Kind:
    """An entry of the register.

    Raise `revision` when the same seed would give another question or verdict. `skills`
    are those that its questions practise. `template` is the page's middle: it defines the
    partials `question` and `feedback`. `feedback["rule"]` names a rule's place in a lesson.
    """

    slug: str
    title: str
    purpose: str
    skills: tuple[str, ...]
    lesson: str
    revision: int
    template: str
    make: Callable[[int], Question]
    grade: Callable[[Question, Mapping[str, str]], Verdict]
