"""What there is to be read at a bench, and the replies to it, of which one is right."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from exercises.drills.judging.rules import Rule


@dataclass(frozen=True, slots=True, kw_only=True)
class BenchReading:
    """`replies` have what there is to be said of each."""

    name: str
    story: str
    facts: Sequence[tuple[str, str]]
    legend: str
    replies: Mapping[str, str]
    right: str
    rule: Rule
