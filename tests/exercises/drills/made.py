"""Questions, their answers and verdicts, each made once in a process.

Making a question takes more time than all that is asked of it, so tests share them, and change
nothing in them. Seeds above a few hundred are for what is counted over many.
"""

from functools import lru_cache
from typing import Any

from exercises.drills.kind import Kind, Verdict
from exercises.drills.question import Question
from exercises.drills.register import kind as of_slug
from exercises.drills.setting.settings import USUAL, Settings
from tests.answers import every_answer

KEPT = 10_000  # questions: those of some ten kinds, in a few hundred megabytes


def made(kind: Kind, seed: int, settings: Settings = USUAL) -> Question:
    return _made(kind.slug, seed, settings)


@lru_cache(maxsize=KEPT)
def _made(slug: str, seed: int, settings: Settings) -> Question:
    return of_slug(slug).make(seed, settings)


def many(kind: Kind, count: int) -> list[Question]:
    """Of the first so many seeds."""
    return [made(kind, seed) for seed in range(count)]


def answers(kind: Kind, seed: int) -> list[dict[str, Any]]:
    """Every answer to a question; a few, where there are too many."""
    return _answers(kind.slug, seed)


@lru_cache(maxsize=300)
def _answers(slug: str, seed: int) -> list[dict[str, Any]]:
    return list(every_answer(_made(slug, seed, USUAL)))


def graded(kind: Kind, seed: int, number: int) -> Verdict:
    """The verdict of one of the answers."""
    return _graded(kind.slug, seed, number)


@lru_cache(maxsize=KEPT)
def _graded(slug: str, seed: int, number: int) -> Verdict:
    return of_slug(slug).grade(_made(slug, seed, USUAL), _answers(slug, seed)[number])
