"""How a fault that was spotted by eye or ear is judged, and what is shown then."""

from collections.abc import Iterator, Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.credit import counted
from exercises.drills.kind import Question, Verdict
from exercises.mastery.misconceptions import MISCONCEPTIONS


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """One part for each ask; right only when all parts are.

    Raises AnswerRefused for an answer that isn't one of the options.
    """
    parts = list(_parts(question, answer))
    rights = sum(part["is_right"] for part in parts)
    beliefs = question.revealed(answer)
    key = question.key
    return Verdict(
        right=rights == len(parts),
        score=round(100 * rights / len(parts)),
        misconceptions=beliefs,
        feedback={
            "parts": parts,
            "credit": counted(rights, len(parts)),
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            "happened": key["happened"],
            "pictures": [*key["afterwards"], *_chosen(question, answer["fault"])],
            "map": key["map"],
            "caption": key["caption"],
            "rule": key["rule"],
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


def _chosen(question: Question, fault: str) -> list[int]:
    """What the fault that was chosen wrongly is like."""
    examples: dict[str, int] = question.key["examples"]
    if fault == question.right["fault"] or fault not in examples:
        return []
    return [examples[fault]]
