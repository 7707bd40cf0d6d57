"""What a question can tell of somebody: the beliefs it touches, and whose an answer is.

`Kind.tells(question)` gives it. A kind whose answers have a tolerance, or whose right answer is
one of several, says in its `near` which answers come to the same.
"""

from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import dataclass
from itertools import product
from math import prod
from typing import Any

from exercises.drills.asks import Ask, Json
from exercises.drills.question import Question

Near = Callable[[Question, str, Any, Any], bool]
"""Whether, to an ask of that name, an answer comes to the same as an expected one."""


def exactly(question: Question, name: str, given: Any, expected: Any) -> bool:
    return bool(given == expected)


@dataclass(frozen=True, slots=True)
class Telling:
    """Somebody who holds none of the beliefs that a question touches answers it right."""

    question: Question
    near: Near

    @property
    def beliefs(self) -> list[str]:
        """Those that alone lead to a wrong answer."""
        held = [subset for subset, _ in self.question.believed]
        held += [beliefs for _, _, beliefs in self._revealing()]
        return list(dict.fromkeys(beliefs[0] for beliefs in held if len(beliefs) == 1))

    def answers(self, held: Collection[str]) -> list[Json]:
        """All that somebody with these beliefs may give, the likeliest first.

        Where the question keeps what is answered under every subset of its beliefs, that is one
        answer. Else each ask is answered by an option that points at beliefs that are all held,
        or right where there is none.
        """
        kept = [entry for entry in self.question.believed if set(entry[0]) <= set(held)]
        if kept:
            return [dict(max(kept, key=lambda entry: len(entry[0]))[1])]
        asks = self.question.asks
        each = [
            list(self._tempting(ask, held)) or [self.question.right.get(ask.name)] for ask in asks
        ]
        return [
            dict(zip((ask.name for ask in asks), values, strict=True)) for values in product(*each)
        ]

    def is_one(self, answer: Mapping[str, Any], held: Collection[str]) -> bool:
        """Whether an answer is one that somebody with these beliefs may give."""
        return any(self._alike(answer, expected) for expected in self.answers(held))

    @property
    def chance(self) -> float:
        """How likely a blind guess is right; 0 where what is typed can't be guessed."""
        if not self.question.right:
            return 0.0
        return prod(self._share(ask) for ask in self.question.asks)

    def _share(self, ask: Ask) -> float:
        """Of all answers to an ask, those that come to the same as the right one."""
        count, right = ask.count(), self.question.right[ask.name]
        if not count:
            return 0.0
        if count > len(ask.every()):
            return 1 / count
        return sum(self.near(self.question, ask.name, each, right) for each in ask.every()) / count

    def _alike(self, answer: Mapping[str, Any], expected: Mapping[str, Any]) -> bool:
        return answer.keys() == expected.keys() and all(
            self.near(self.question, name, answer[name], expected[name]) for name in expected
        )

    def _tempting(self, ask: Ask, held: Collection[str]) -> Iterator[Any]:
        for name, value, beliefs in self._revealing():
            if name == ask.name and set(beliefs) <= set(held):
                yield ask.read([value])

    def _revealing(self) -> Iterator[tuple[str, str, list[str]]]:
        """Each wrong answer that points at beliefs: its ask, what is typed, and which."""
        for name, reveals in self.question.reveals.items():
            for value, beliefs in reveals.items():
                yield name, value, beliefs
