"""A question as it is asked, and as it is kept: plain values, stored with what is answered."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, Self

from exercises.drills.asks import AnswerRefused, Ask, Json, ask_of_json
from exercises.drills.beliefs.telling_apart import Believed


@dataclass(frozen=True, kw_only=True)
class Question:
    """A question as asked.

    `shown` is all that a page may use before the answer. `right` (by ask) and `reveals` (by
    ask and wrong answer as text: the misconceptions that it points at) stay on the server, and
    so does `key`, what the kind's own `grade` and template need. `situation` names what the
    question is about, for counts; `skill` is the one that it practises; `rule` is what to go by
    (`Rule.at`), and where a lesson says so.

    `believed` has the answer under every subset of the beliefs that the question tells apart
    (`telling_apart`), `media` what it shows beside words (`media`), `bench` the figures that it
    was made for, where somebody has set them.
    """

    situation: str
    skill: str
    asks: tuple[Ask, ...]
    shown: Json
    right: Mapping[str, Any]
    reveals: Mapping[str, Mapping[str, list[str]]] = field(default_factory=dict)
    rule: Json | None = None
    believed: Believed = field(default_factory=list)
    media: list[Json] = field(default_factory=list)
    bench: Json | None = None
    key: Json = field(default_factory=dict)

    def as_json(self) -> Json:
        return {
            **{name: getattr(self, name) for name in self.__dataclass_fields__},
            "asks": [ask.as_json() for ask in self.asks],
        }

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        known = stored if "rule" in stored else lifted(stored)
        return cls(**{**known, "asks": tuple(map(ask_of_json, known["asks"]))})

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

    def revealed(self, answer: Mapping[str, Any]) -> tuple[str, ...]:
        """The misconceptions that the wrong parts of an answer point at, each once."""
        found = (
            belief
            for name, value in answer.items()
            for belief in self.reveals.get(name, {}).get(str(value), ())
        )
        return tuple(dict.fromkeys(found))


def lifted(stored: Json) -> Json:
    """A question that was kept when what every kind has in common stood in its key."""
    key = dict(stored["key"])
    common = {name: key.pop(name) for name in ("rule", "believed", "media") if name in key}
    bench = {name: key.pop(name) for name in ("settings", "figures") if name in key}
    return {"rule": None, **stored, **common, "bench": bench or None, "key": key}
