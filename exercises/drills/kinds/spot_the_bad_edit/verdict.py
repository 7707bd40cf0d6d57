"""How an answer to “spot the bad edit” is judged, and what is shown then.

All of it stands in the question's key, where the tape model put it.
"""

from collections.abc import Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.judging.parts import judged, parts
from exercises.drills.kind import Verdict
from exercises.drills.kinds.spot_the_bad_edit.answers import LEAVE, TRACKING
from exercises.drills.question import Question

ADJUST = (
    "The streaks lie over all that was recorded, also where nobody edited: they are not on the "
    "tape. Adjust the tracking of the machine that plays it, and they go."
)


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """One part for each ask; right only when all parts are.

    Raises AnswerRefused for an answer that isn't one of the options.
    """
    told, found = question.key["told"], list(parts(question, answer))
    mends = _mends(told, answer["mend"], question.right["mend"])
    return judged(found, question.revealed(answer), **{**told, "mends": mends})


def _mends(told: Json, chosen: str, right: str) -> list[str]:
    """What the right mend does, and what the chosen one would do instead."""
    if right == TRACKING:
        return [ADJUST]
    if right == LEAVE:
        return [] if chosen == LEAVE else ["There is nothing to mend, and every edit is a risk."]
    return [told["mends"][mend] for mend in dict.fromkeys((right, chosen)) if mend in told["mends"]]
