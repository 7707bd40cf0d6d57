"""How a reply to what a bench shows is judged."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.judging import reply
from exercises.drills.kind import Question, Verdict


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for an answer that isn't one of the options."""
    return reply.graded(question, answer, ())
