"""How an answer to “can this bench do it?” is judged."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.beliefs.telling_apart import explained
from exercises.drills.judging import reply
from exercises.drills.kind import Question, Verdict


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for an answer that isn't one of the options."""
    beliefs = explained(question.believed, dict(answer))
    return reply.graded(question, answer, beliefs)
