"""How an answer to “spot the bad edit” is judged, and what is shown then.

All of it stands in the question's key, where the tape model put it.
"""

from collections.abc import Mapping

from exercises.drills.kind import Ask, Json, Option, Question, Verdict
from exercises.drills.spot_described.answers import LEAVE
from exercises.mastery.misconceptions import MISCONCEPTIONS


def grade(question: Question, answer: Mapping[str, str]) -> Verdict:
    """One part for each ask; right only when all parts are.

    Raises ValueError for an answer that isn't one of the options.
    """
    chosen, told = question.chosen(answer), question.key["told"]
    parts = [_part(ask, chosen[ask.name], question.right[ask.name]) for ask in question.asks]
    rights = sum(part["is_right"] for part in parts)
    beliefs = question.revealed(answer)
    return Verdict(
        right=rights == len(parts),
        score=round(100 * rights / len(parts)),
        misconceptions=beliefs,
        feedback={
            **told,
            "parts": parts,
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            "mends": _mends(told, chosen["mend"].value, question.right["mend"]),
            "rule": question.key["rule"],
        },
    )


def _part(ask: Ask, chosen: Option, right: str) -> Json:
    return {
        "legend": ask.legend,
        "chosen": chosen.text,
        "right": ask.option(right).text,
        "is_right": chosen.value == right,
    }


def _mends(told: Json, chosen: str, right: str) -> list[str]:
    """What the right mend does, and what the chosen one would do instead."""
    if right == LEAVE:
        return [] if chosen == LEAVE else ["There is nothing to mend, and every edit is a risk."]
    return [told["mends"][mend] for mend in dict.fromkeys((right, chosen)) if mend in told["mends"]]
