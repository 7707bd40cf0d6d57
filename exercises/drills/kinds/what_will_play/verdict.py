"""How an answer to “what will play?” is judged, and what is shown then."""

from collections.abc import Mapping
from typing import Any, cast

from exercises.drills.asks import Json, Table
from exercises.drills.beliefs import telling_apart
from exercises.drills.judging.parts import counted
from exercises.drills.kind import Verdict
from exercises.drills.question import Question


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """The share of stretches that are right; right only when all are.

    Raises AnswerRefused for an answer that isn't one of the options.
    """
    question.checked(answer)
    rows = parts(question, answer)
    rights = sum(row["is_right"] for row in rows)
    beliefs = telling_apart.explained(question.believed, dict(answer))
    told = question.key["told"]
    return Verdict(
        right=rights == len(rows),
        score=100 * rights // len(rows),
        misconceptions=beliefs,
        feedback={
            "credit": counted(rights, len(rows), "stretches"),
            "rows": rows,
            "expected": told["expected"].get(beliefs[0]) if len(beliefs) == 1 else None,
            "map": told["map"],
        },
    )


def parts(question: Question, answer: Mapping[str, Any]) -> list[Json]:
    """Stretch by stretch: what was expected, what plays, and why."""
    ask = cast(Table, question.asks[0])
    said, right = ask.texts(answer["plays"]), ask.texts(question.right["plays"])
    return [
        {
            "stretch": stretch,
            "said": mine,
            "right": true,
            "is_right": mine == true,
            "why": why,
        }
        for stretch, [mine], [true], why in zip(
            ask.lines, said, right, question.key["told"]["why"], strict=True
        )
    ]
