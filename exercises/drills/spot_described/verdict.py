"""How an answer to “spot the bad edit” is judged, and what is shown then.

All of it stands in the question's key, where the tape model put it.
"""

from collections.abc import Iterator, Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.credit import counted
from exercises.drills.kind import Question, Verdict
from exercises.drills.spot_described.answers import LEAVE
from exercises.mastery.misconceptions import MISCONCEPTIONS


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """One part for each ask; right only when all parts are.

    Raises AnswerRefused for an answer that isn't one of the options.
    """
    told = question.key["told"]
    parts = list(_parts(question, answer))
    rights = sum(part["is_right"] for part in parts)
    beliefs = question.revealed(answer)
    return Verdict(
        right=rights == len(parts),
        score=round(100 * rights / len(parts)),
        misconceptions=beliefs,
        feedback={
            **told,
            "parts": parts,
            "credit": counted(rights, len(parts)),
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            "mends": _mends(told, answer["mend"], question.right["mend"]),
            "rule": question.key["rule"],
        },
    )


def _parts(question: Question, answer: Mapping[str, Any]) -> Iterator[Json]:
    chosen, right = question.checked(answer), question.checked(question.right)
    for ask in question.asks:
        yield {
            "legend": ask.legend,
            "chosen": chosen[ask.name],
            "right": right[ask.name],
            "is_right": answer[ask.name] == question.right[ask.name],
        }


def _mends(told: Json, chosen: str, right: str) -> list[str]:
    """What the right mend does, and what the chosen one would do instead."""
    if right == LEAVE:
        return [] if chosen == LEAVE else ["There is nothing to mend, and every edit is a risk."]
    return [told["mends"][mend] for mend in dict.fromkeys((right, chosen)) if mend in told["mends"]]
