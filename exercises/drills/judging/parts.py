"""An answer part by part: what was asked, what was said, what is right."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.kind import Verdict
from exercises.drills.question import Question


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


def judged(
    found: Sequence[Json], beliefs: tuple[str, ...], what: str = "answers", **more: Any
) -> Verdict:
    """Parts that count alike; right only when all are. `more` is told beside them."""
    rights = sum(part["is_right"] for part in found)
    return Verdict(
        right=rights == len(found),
        score=round(100 * rights / len(found)),
        misconceptions=beliefs,
        feedback={**more, "parts": list(found), "credit": counted(rights, len(found), what)},
    )


def counted(rights: int, count: int, what: str = "answers") -> str:
    """Why parts that count alike give the score they do; empty where there is one."""
    return f"{rights} of {count} {what} right; each counts as much as another." if count > 1 else ""
