"""What a kind of drill is: how a question is made, what is asked, how an answer is judged.

Everything here is pure: no request, no database. Questions and verdicts turn into
JSON-able dicts, because they are stored with the attempt and never made again.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from typing import Any, Self

from exercises.drills.asks import AnswerRefused, Ask, Json, ask_of_json
from exercises.drills.settings import USUAL, Meter, Settings


@dataclass(frozen=True, kw_only=True)
class Question:
    """A question as asked.

    `shown` is all that a page may use before the answer. `right` (by ask), `reveals` (by
    ask and wrong answer as text: the misconceptions that it points at) and `key`, what else
    `grade` needs, stay on the server. `situation` names what the question is about, for counts;
    `skill` is the one that it practises.
    """

    situation: str
    skill: str
    asks: tuple[Ask, ...]
    shown: Json
    right: Mapping[str, Any]
    reveals: Mapping[str, Mapping[str, list[str]]]
    key: Json

    def as_json(self) -> Json:
        return {
            **{name: getattr(self, name) for name in self.__dataclass_fields__},
            "asks": [ask.as_json() for ask in self.asks],
        }

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        return cls(**{**stored, "asks": tuple(map(ask_of_json, stored["asks"]))})

    def checked(self, answer: Mapping[str, Any]) -> dict[str, str]:
        """Every part of an answer in words, by ask.

        Raises AnswerRefused, with a sentence, where one is missing, unknown or not asked for.
        """
        for name in answer:
            if name not in {ask.name for ask in self.asks}:
                raise AnswerRefused(f"Nothing named {name!r} is asked.")
        for ask in self.asks:
            if ask.name not in answer:
                raise AnswerRefused(f"There is no answer to “{ask.legend}”")
        return {ask.name: ask.in_words(answer[ask.name]) for ask in self.asks}

    @property
    def media(self) -> list[Json]:
        """What it shows beside words: see `media`."""
        found: list[Json] = self.key.get("media", [])
        return found

    def revealed(self, answer: Mapping[str, Any]) -> tuple[str, ...]:
        """The misconceptions that the wrong parts of an answer point at, each once."""
        found = (
            belief
            for name, value in answer.items()
            for belief in self.reveals.get(name, {}).get(str(value), ())
        )
        return tuple(dict.fromkeys(found))


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
    `needs` are meters that its questions can't do without.

    `candidates` are what a seed draws at a bench, one after the other; None where it makes no
    question with one right answer, or two beliefs would answer alike.
    `tells_bench`: its question says which bench it is about, whoever is asked.
    `by_hand`: an instructor reads the answers; until then they are neither right nor wrong.
    `own`: the key of the revision that it is made of, where an instructor wrote it.
    """

    slug: str
    title: str
    purpose: str
    skills: tuple[str, ...]
    lesson: str
    revision: int
    template: str
    candidates: Callable[[int, Settings], Iterator[Question | None]]
    grade: Callable[[Question, Mapping[str, Any]], Verdict]
    by_hand: bool = False
    tells_bench: bool = False
    needs: frozenset[Meter] = frozenset()
    own: int | None = None

    def is_at(self, settings: Settings) -> bool:
        """Whether a bench has the meters that the questions are read from."""
        return self.needs <= settings.meters

    def make(self, seed: int, settings: Settings = USUAL) -> Question:
        """The first question that the seed draws, at a bench with these settings.

        Where somebody has set them, the question's key keeps them.
        """
        made = next(question for question in self.candidates(seed, settings) if question)
        if settings.either_rate or self.tells_bench:
            return made
        own = {"settings": settings.as_json(), "figures": settings.told}
        return replace(made, key={**made.key, **own})
