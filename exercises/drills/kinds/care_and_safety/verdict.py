"""How an answer about care and safety is judged."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.beliefs.telling_apart import explained
from exercises.drills.judging import reply
from exercises.drills.kind import Question, Verdict


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for an answer that isn't one of the options."""
    key = question.key
    told = {name: key[name] for name in ("caution", "source")}
    beliefs = explained(question.believed, dict(answer))
    return reply.graded(question, answer, beliefs, **told)
