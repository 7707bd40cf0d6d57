"""How many questions a kind of drill makes, and how fairly: ``python -m tests.bench.drills``.

Speed is counted in processor time, so that a busy machine doesn't matter. Shares are of the
questions that hold the ask; of a table, of its cells. By chance the longest option of a
choice is right in one of as many cases as it has options, and so is the shortest.
"""

import hashlib
import json
import sys
import time
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from exercises.drills.asks import Ask, Choice, Dial, Several, Table
from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.drills.register import KINDS

SEEDS = 10_000
ALIKE = 2  # characters: options that differ by less look alike
TITLES = {
    "longest": "longest is right, %",
    "shortest": "shortest is right, %",
    "chance": "by chance, %",
}


@dataclass
class Lengths:
    """How often the longest and the shortest option were right, and how often by chance."""

    longest: float = 0.0
    shortest: float = 0.0
    chance: float = 0.0

    def add(self, ask: Choice, right: str) -> None:
        texts = {option.value: len(option.text) for option in ask.options}
        most, least = max(texts.values()), min(texts.values())
        self.longest += share(right, [each for each, n in texts.items() if n >= most - ALIKE])
        self.shortest += share(right, [each for each, n in texts.items() if n <= least + ALIKE])
        self.chance += 1 / len(texts)


def share(right: str, values: list[str]) -> float:
    """How likely somebody is right who picks any of these."""
    return (right in values) / len(values)


@dataclass
class Tally:
    """What was counted over the questions of one kind."""

    seconds: float = 0.0
    drawn: int = 0
    shown: set[bytes] = field(default_factory=set)
    situations: set[str] = field(default_factory=set)
    answers: dict[str, Counter[str]] = field(default_factory=dict)
    asked: Counter[str] = field(default_factory=Counter)
    lengths: dict[str, Lengths] = field(default_factory=dict)

    def add(self, question: Question) -> None:
        text = json.dumps(question.shown, sort_keys=True).encode()
        self.shown.add(hashlib.sha256(text).digest())
        self.situations.add(question.situation)
        for ask in question.asks:
            if ask.name not in question.right:  # an instructor judges it
                continue
            value = question.right[ask.name]
            self.asked[ask.name] += 1
            for name, position in positions(ask, value):
                self.answers.setdefault(name, Counter())[position] += 1
            if isinstance(ask, Choice):
                self.lengths.setdefault(ask.name, Lengths()).add(ask, value)

    def figures(self) -> dict[str, object]:
        return {
            "questions a second": round(SEEDS / self.seconds),
            "rejected, %": round(100 * (self.drawn - SEEDS) / self.drawn, 2),
            "distinct in 10,000 seeds": len(self.shown),
            "situations": len(self.situations),
            "right answers, %": {
                name: {
                    value: percent(count, self.asked[name] or counts.total())
                    for value, count in sorted(counts.items(), key=in_order)
                }
                for name, counts in self.answers.items()
            },
            **{
                TITLES[extreme]: {
                    name: percent(getattr(lengths, extreme), self.asked[name])
                    for name, lengths in self.lengths.items()
                }
                for extreme in TITLES
            },
        }


def positions(ask: Ask, answer: Any) -> Iterator[tuple[str, str]]:
    """Which options make up an answer, by ask; of a table, which place in a column's list.

    For what is typed, nothing.
    """
    if isinstance(ask, (Choice, Dial)):
        yield ask.name, str(answer)
    elif isinstance(ask, Several):
        yield from ((ask.name, value) for value in answer)
    elif isinstance(ask, Table):
        for row in answer:
            for column, value in zip(ask.columns, row, strict=True):
                values = [option.value for option in column.options]
                yield column.title, str(values.index(value) + 1)


def in_order(entry: tuple[str, int]) -> tuple[int, str]:
    """By number where it is one, else by name."""
    value = entry[0]
    return (int(value) if value.isdigit() else 0, value)


def percent(count: float, asked: int) -> float:
    return round(100 * count / asked, 1)


def tally(kind: Kind) -> Tally:
    found = Tally()
    for seed in range(SEEDS):
        began = time.process_time()
        drawn = 0
        for question in kind.candidates(seed):
            drawn += 1
            if question:
                break
        found.seconds += time.process_time() - began
        found.drawn += drawn
        if question:
            found.add(question)
    return found


def told(figures: dict[str, object]) -> Iterator[str]:
    for name, value in figures.items():
        if not isinstance(value, dict):
            yield f"  {name:26} {value}"
            continue
        yield f"  {name}"
        for key, part in value.items():
            yield f"    {key:24} {spread(part)}"


def spread(part: object) -> str:
    if isinstance(part, dict):
        return "  ".join(f"{name} {value}" for name, value in part.items())
    return str(part)


def main() -> None:
    figures = {}
    for slug, kind in KINDS.items():
        figures[slug] = tally(kind).figures()
        print(slug, *told(figures[slug]), "", sep="\n")
        sys.stdout.flush()
    print(json.dumps(figures))


if __name__ == "__main__":
    main()
