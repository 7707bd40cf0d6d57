"""How a level on paper is judged: by a band, with less credit beyond it."""

from collections.abc import Iterator, Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.kind import Verdict
from exercises.drills.question import Question


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """The mean of the parts; right only when every part is.

    Raises AnswerRefused for what can't be an answer.
    """
    parts = list(told(question, answer))
    beliefs = revealed(question, answer)
    return Verdict(
        right=all(part["score"] == 100 for part in parts),
        score=round(sum(part["score"] for part in parts) / len(parts)),
        misconceptions=beliefs,
        feedback={
            "parts": parts,
            "credit": "Each of the two answers counts for half." if len(parts) > 1 else "",
        },
    )


def told(question: Question, answer: Mapping[str, Any]) -> Iterator[Json]:
    chosen, right = question.checked(answer), question.checked(question.right)
    for ask in question.asks:
        score = part_score(question, ask.name, answer[ask.name])
        yield {
            "legend": ask.legend,
            "chosen": chosen[ask.name],
            "right": right[ask.name],
            "score": score,
            "why": question.key["why"][ask.name],
            "credit": credit(question, score) if ask.name == "turn" else "",
            "slip": slip(question, answer["turn"]) if ask.name == "turn" else "",
        }


def part_score(question: Question, name: str, value: Any) -> int:
    if name != "turn":
        return 100 if value == question.right[name] else 0
    return turned(abs(value - question.right[name]), question.key["band"])


def turned(off: float, band: float) -> int:
    """All within the band, nothing from three times the band on, in between by how far off.

    >>> [turned(off, 2) for off in (0, 2, 3, 4, 5, 6, 20)]
    [100, 100, 75, 50, 25, 0, 0]
    """
    return round(100 * min(1, max(0, (3 * band - off) / (2 * band))))


def credit(question: Question, score: int) -> str:
    if score in (0, 100):
        return ""
    return f"{score} % of this part: it is more than {question.key['band']:g} off, but not by far."


def revealed(question: Question, answer: Mapping[str, Any]) -> tuple[str, ...]:
    """The beliefs whose answer this is, within the band; or else those behind its parts."""
    kept, band = question.believed, question.key["band"]
    for held, given in kept:
        if all(alike(name, answer[name], given[name], band) for name in given):
            return tuple(held)
    found = [
        belief
        for name in answer
        for belief in next(
            (held for held, given in kept if alike(name, answer[name], given[name], band)), ()
        )
    ]
    return tuple(dict.fromkeys(found))


def near(question: Question, name: str, given: Any, expected: Any) -> bool:
    return alike(name, given, expected, question.key["band"])


def alike(name: str, value: Any, expected: Any, band: float) -> bool:
    return bool(value == expected if name != "turn" else abs(value - expected) <= band)


def slip(question: Question, value: float) -> str:
    """What may have gone wrong in reckoning."""
    right, band = question.right["turn"], question.key["band"]
    if abs(value - right) <= band:
        return ""
    for turn, sentence in question.key.get("slips", ()):
        if abs(value - turn) <= band:
            return str(sentence)
    if abs(value + right) <= band:
        return "The amount is right, the direction is not."
    if abs(value - 2 * right) <= band:
        return "That is twice as far as it needs."
    if abs(2 * value - right) <= band:
        return "That is half as far as it needs."
    return ""
