"""How an answer to “which generation?” is judged, and what is shown then."""

from collections.abc import Mapping
from typing import Any, cast

from exercises.drills.asks import Json, Table
from exercises.drills.beliefs.telling_apart import Believed
from exercises.drills.kind import Verdict
from exercises.drills.kinds.which_generation.answers import TOLERANCE
from exercises.drills.question import Question


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """A third for the share of right generations, a third each for the two other asks.

    Raises AnswerRefused for an answer that `read` can't give.
    """
    chosen, right = question.checked(answer), question.checked(question.right)
    rows = generations(question, answer)
    counted = sum(row["is_right"] for row in rows)
    noise = abs(answer["noise"] - question.right["noise"]) <= TOLERANCE
    again = answer["again"] == question.right["again"]
    beliefs = explained(question, answer)
    told = question.key["told"]
    return Verdict(
        right=counted == len(rows) and noise and again,
        score=round(100 * (counted / len(rows) + noise + again) / 3),
        misconceptions=beliefs,
        feedback={
            "credit": f"{counted} of {len(rows)} generations right; each of the three answers "
            "counts for a third.",
            "rows": rows,
            "parts": [
                _part(question, chosen, right, "noise", noise, told["sum"]),
                _part(question, chosen, right, "again", again, told["again"]),
            ],
        },
    )


def generations(question: Question, answer: Mapping[str, Any]) -> list[Json]:
    ask = cast(Table, question.asks[0])
    said, true = ask.texts(answer["generations"]), ask.texts(question.right["generations"])
    return [
        {"shot": shot, "said": mine, "right": right, "is_right": mine == right, "way": way}
        for shot, [mine], [right], way in zip(
            ask.lines, said, true, question.key["told"]["ways"], strict=True
        )
    ]


def _part(
    question: Question,
    chosen: Mapping[str, str],
    right: Mapping[str, str],
    name: str,
    is_right: bool,
    why: str,
) -> Json:
    legend = next(ask.legend for ask in question.asks if ask.name == name)
    return {
        "legend": legend,
        "chosen": chosen[name],
        "right": right[name],
        "is_right": is_right,
        "why": why,
    }


def near(question: Question, name: str, given: Any, expected: Any) -> bool:
    if name == "noise":
        return bool(abs(given - expected) <= TOLERANCE)
    return bool(given == expected)


def explained(question: Question, answer: Mapping[str, Any]) -> tuple[str, ...]:
    """The beliefs behind an answer, the figure read with the same tolerance."""
    kept: Believed = question.believed
    near = [
        [held, given] for held, given in kept if abs(given["noise"] - answer["noise"]) <= TOLERANCE
    ]
    return next(
        (tuple(held) for held, given in near if given | {"noise": answer["noise"]} == answer), ()
    )
