"""Whoever holds beliefs, in tests: what they answer, and which of them a question touches."""

from collections.abc import Collection
from typing import Any

from exercises.drills.question import Question
from exercises.drills.telling import Telling, exactly


def believed(question: Question, beliefs: Collection[str]) -> dict[str, Any]:
    """The likeliest answer of somebody with these beliefs."""
    return Telling(question, exactly).answers(beliefs)[0]


def touched(question: Question) -> list[str]:
    return Telling(question, exactly).beliefs
