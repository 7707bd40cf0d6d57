"""How a sum is judged: exactly, part by part, with the working."""

from collections.abc import Iterator, Mapping
from typing import Any

from exercises.drills.asks import Json, Moment
from exercises.drills.kind import Question, Verdict
from exercises.drills.parts import counted
from exercises.drills.telling_apart import explained
from exercises.mastery.misconceptions import MISCONCEPTIONS


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for what can't be an answer."""
    parts = list(told(question, answer))
    rights = sum(part["is_right"] for part in parts)
    beliefs = revealed(question, answer)
    return Verdict(
        right=rights == len(parts),
        score=round(100 * rights / len(parts)),
        misconceptions=beliefs,
        feedback={
            "parts": parts,
            "note": question.key["note"],
            "credit": counted(rights, len(parts), "results"),
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            "rule": question.key["rule"],
        },
    )


def told(question: Question, answer: Mapping[str, Any]) -> Iterator[Json]:
    chosen, right = question.checked(answer), question.checked(question.right)
    for ask in question.asks:
        off = answer[ask.name] - question.right[ask.name]
        yield {
            "legend": ask.legend,
            "chosen": chosen[ask.name],
            "right": right[ask.name],
            "is_right": not off,
            "working": question.key["working"][ask.name],
            "slip": slip(off, question.key["labels"]) if isinstance(ask, Moment) else "",
        }


def revealed(question: Question, answer: Mapping[str, Any]) -> tuple[str, ...]:
    """The beliefs that lead to the answer, or else those that lead to parts of it."""
    kept = question.key["believed"]
    whole = explained(kept, dict(answer))
    if whole:
        return whole
    found = [
        belief
        for name, value in answer.items()
        if value != question.right[name]
        for belief in explained([[held, given[name]] for held, given in kept], value)
    ]
    return tuple(dict.fromkeys(found))


def slip(off: int, labels: int) -> str:
    """What may have gone wrong in reckoning, from how many frames a result is off."""
    size = abs(off)
    if size == 1:
        return "One frame off: the edit out is the first frame that no longer belongs."
    if size and size % (60 * labels) == 0:
        return "The minutes are off: look again at what is carried from the seconds."
    if size and size % labels == 0:
        return "The seconds are off: look again at what is carried from the frames."
    if size in (100 - labels, 25, 30, 5):
        return f"A second has {labels} labels here: look again at what is carried from the frames."
    return ""
