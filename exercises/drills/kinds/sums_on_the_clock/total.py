"""A sum: what is added up and taken away, by the rules or as a believer counts."""

from collections.abc import Collection, Iterator
from dataclasses import dataclass

from exercises.drills.asks import Amount, Json, Moment
from exercises.drills.judging.rules import Rule


@dataclass(frozen=True, slots=True, kw_only=True)
class Term:
    """Frames, or things, with a `sign`, and what they are.

    Who holds the belief `unless` leaves it out; `only` who holds the belief `only` counts it.
    """

    words: str
    count: int
    sign: int = 1
    unless: str = ""
    only: str = ""

    def counts(self, beliefs: Collection[str]) -> bool:
        return self.unless not in beliefs and (not self.only or self.only in beliefs)


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """One thing that is asked, and the terms that it is made of."""

    ask: Moment | Amount
    terms: tuple[Term, ...]

    def value(self, beliefs: Collection[str] = ()) -> int:
        return sum(term.sign * term.count for term in self.terms if term.counts(beliefs))

    def told(self, beliefs: Collection[str] = (), *, in_pictures: bool = False) -> list[Json]:
        """The working, line by line; `in_pictures` where code leaves labels out."""
        return [
            {
                "sign": "−" if term.sign < 0 else "+" if number else "",
                "value": f"{term.count:,} pictures" if in_pictures else self._value(term.count),
                "words": term.words,
            }
            for number, term in enumerate(each for each in self.terms if each.counts(beliefs))
        ]

    def _value(self, count: int) -> str:
        ask = self.ask
        return ask.told(count) if isinstance(ask, Amount) else ask.in_words(count)


@dataclass(frozen=True, slots=True, kw_only=True)
class Total:
    """A question before it is asked; `facts` are pairs of a term and its value.

    `note` is a sentence beside the working.
    """

    story: str
    facts: tuple[tuple[str, str], ...]
    parts: tuple[Part, ...]
    rule: Rule
    note: str = ""

    def answer(self, beliefs: Collection[str] = ()) -> Json:
        return {part.ask.name: part.value(beliefs) for part in self.parts}

    def beliefs(self) -> list[str]:
        """Those that concern one of its terms."""
        return list(dict.fromkeys(self._named()))

    def _named(self) -> Iterator[str]:
        for part in self.parts:
            for term in part.terms:
                yield from filter(None, (term.unless, term.only))
