"""How an answer to “enough run-up?” is judged, and what is shown then."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.beliefs import telling_apart
from exercises.drills.kind import Verdict
from exercises.drills.question import Question


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Half for the ticks, right ones less wrong ones; half for the time code.

    Raises AnswerRefused for an answer that `read` can't give.
    """
    chosen, right = question.checked(answer), question.checked(question.right)
    ticked, bad = set(answer["shots"]), set(question.right["shots"])
    hits, wrong = len(ticked & bad), len(ticked - bad)
    share = max(0, hits - wrong) / len(bad)
    exact = answer["earliest"] == question.right["earliest"]
    beliefs = telling_apart.explained(question.believed, dict(answer))
    told = question.key["told"]
    return Verdict(
        right=ticked == bad and exact,
        score=round(50 * share + 50 * exact),
        misconceptions=beliefs,
        feedback={
            "credit": f"{hits} of {len(bad)} found, {wrong or 'none'} ticked that should not be; "
            "the ticks count for half, the time code for half.",
            "rows": rows(question, ticked),
            "chosen": chosen["earliest"],
            "right": right["earliest"],
            "exact": exact,
            "earliest": told["earliest"],
            "map": told["map"],
            "caption": told["caption"],
        },
    )


def rows(question: Question, ticked: set[str]) -> list[Json]:
    """Shot by shot: whether it can be edited, why, and what was ticked."""
    bad = set(question.right["shots"])
    return [
        {
            "shot": row["shot"],
            "number": row["number"],
            "bad": str(row["number"]) in bad,
            "ticked": str(row["number"]) in ticked,
            "is_right": (str(row["number"]) in bad) == (str(row["number"]) in ticked),
            "why": why,
        }
        for row, why in zip(question.shown["rows"], question.key["told"]["why"], strict=True)
    ]
