"""How one reply among several is judged, for the kinds that ask for one."""

from collections.abc import Mapping, Sequence
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.kind import Question, Verdict


def graded(
    question: Question, answer: Mapping[str, Any], beliefs: Sequence[str], **more: Json | str
) -> Verdict:
    """Right or wrong, with the reason against what was chosen and for what is right.

    Raises AnswerRefused for an answer that isn't one of the options.
    """
    chosen, best = (question.checked(each)["reply"] for each in (answer, question.right))
    right, whys = answer["reply"] == question.right["reply"], question.key["whys"]
    return Verdict(
        right=right,
        score=100 if right else 0,
        misconceptions=tuple(beliefs),
        feedback={
            "chosen": chosen,
            "right": best,
            "why_not": "" if right else whys[answer["reply"]],
            "why": whys[question.right["reply"]],
            **more,
        },
    )
