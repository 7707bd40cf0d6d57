"""How a sum is judged: exactly, part by part, with the working."""

from collections.abc import Iterator, Mapping
from typing import Any

from exercises.drills.asks import Json, Moment
from exercises.drills.beliefs.telling_apart import explained
from exercises.drills.judging.parts import judged
from exercises.drills.kind import Verdict
from exercises.drills.question import Question

EDITS_IN = ("in", "source", "master")  # asks for an edit in
ENDS = ("out", "end", "old", "long", "rest", "tape")  # asks for where something ends, or how long
ONE_OFF = {
    (True, False): "One frame off: the edit in is the first frame that is copied.",
    (False, True): "One frame off: the edit out is the first frame that no longer belongs.",
    (False, False): "One frame off: count once more, frame by frame.",
}


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for what can't be an answer."""
    question.checked(answer)
    beliefs = revealed(question, answer)
    parts = list(told(question, answer, explained=bool(beliefs)))
    return judged(parts, beliefs, "results", note=question.key["note"])


def told(question: Question, answer: Mapping[str, Any], *, explained: bool) -> Iterator[Json]:
    """Part by part; what may have gone wrong in reckoning, where no belief explains it."""
    chosen, right = question.checked(answer), question.checked(question.right)
    for ask in question.asks:
        off = answer[ask.name] - question.right[ask.name]
        yield {
            "legend": ask.legend,
            "chosen": chosen[ask.name],
            "right": right[ask.name],
            "is_right": not off,
            "working": question.key["working"][ask.name],
            "slip": slip(off, question.key["labels"], ask.name)
            if isinstance(ask, Moment) and not explained
            else "",
        }


def revealed(question: Question, answer: Mapping[str, Any]) -> tuple[str, ...]:
    """The beliefs that lead to the answer, or else those that lead to parts of it."""
    kept = question.believed
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


def slip(off: int, labels: int, name: str) -> str:
    """What may have gone wrong in reckoning, from how many frames a result is off.

    `name` is that of the ask: an edit in is no edit out.
    """
    size = abs(off)
    if size == 1:
        return ONE_OFF[name in EDITS_IN, name in ENDS]
    if size and size % (60 * labels) == 0:
        return "The minutes are off: look again at what is carried from the seconds."
    if size and size % labels == 0:
        return "The seconds are off: look again at what is carried from the frames."
    if size in (100 - labels, 25, 30, 5):
        return f"A second has {labels} labels here: look again at what is carried from the frames."
    return ""
