"""How an answer about care and safety is judged."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.kind import Question, Verdict
from exercises.mastery.misconceptions import MISCONCEPTIONS


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for an answer that isn't one of the options."""
    chosen = question.checked(answer)["reply"]
    right = answer["reply"] == question.right["reply"]
    key, beliefs = question.key, question.revealed(answer)
    return Verdict(
        right=right,
        score=100 if right else 0,
        misconceptions=beliefs,
        feedback={
            "chosen": chosen,
            "right": question.checked(question.right)["reply"],
            "why_not": "" if right else key["whys"][answer["reply"]],
            "why": key["because"],
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            "caution": key["caution"],
            "source": key["source"],
            "rule": key["rule"],
        },
    )
