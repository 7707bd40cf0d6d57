"""What comes of a free answer at once: it is kept, and waits for somebody to read it."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.kind import Question, Verdict


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """No judgement: the answer waits.

    Raises AnswerRefused for a text that is too short or too long.
    """
    return Verdict(
        right=False,
        score=0,
        pending=True,
        feedback={
            "text": question.checked(answer)["text"],
            "rubric": question.key["rubric"],
        },
    )
