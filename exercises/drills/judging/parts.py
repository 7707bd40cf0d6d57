"""An answer part by part: what was asked, what was said, what is right."""

from collections.abc import Iterator, Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.kind import Question


def parts(question: Question, answer: Mapping[str, Any]) -> Iterator[Json]:
    """Raises AnswerRefused for an answer that the question does not take."""
    chosen, right = question.checked(answer), question.checked(question.right)
    for ask in question.asks:
        yield {
            "legend": ask.legend,
            "chosen": chosen[ask.name],
            "right": right[ask.name],
            "is_right": answer[ask.name] == question.right[ask.name],
        }


def counted(rights: int, count: int, what: str = "answers") -> str:
    """Why parts that count alike give the score they do; empty where there is one."""
    return f"{rights} of {count} {what} right; each counts as much as another." if count > 1 else ""
