"""How an answer to “can this bench do it?” is judged."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.kind import Question, Verdict
from exercises.drills.telling_apart import explained
from exercises.mastery.misconceptions import MISCONCEPTIONS


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for an answer that isn't one of the options."""
    chosen = question.checked(answer)["reply"]
    right = answer["reply"] == question.right["reply"]
    beliefs = explained(question.key["believed"], dict(answer))
    whys = question.key["whys"]
    return Verdict(
        right=right,
        score=100 if right else 0,
        misconceptions=beliefs,
        feedback={
            "chosen": chosen,
            "right": question.checked(question.right)["reply"],
            "why_not": "" if right else whys[answer["reply"]],
            "why": whys[question.right["reply"]],
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            "rule": question.key["rule"],
        },
    )
