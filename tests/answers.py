"""Right and wrong answers to a question."""

from collections.abc import Iterator
from itertools import product
from typing import Any

from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.models import Asked


def every_answer(question: Question) -> Iterator[dict[str, Any]]:
    names = [ask.name for ask in question.asks]
    for values in product(*(ask.every() for ask in question.asks)):
        yield dict(zip(names, values, strict=True))


def first_wrong(kind: Kind, question: Question) -> dict[str, Any]:
    """The first answer to try that the kind judges wrong."""
    return next(a for a in every_answer(question) if not kind.grade(question, a).right)


def right_answer(asked: Asked) -> dict[str, Any]:
    """The answer of the key; any, where an instructor reads it."""
    question = asked.as_question()
    return dict(question.right) or next(every_answer(question))


def wrong_answer(asked: Asked) -> dict[str, Any]:
    return first_wrong(asked.kind, asked.as_question())


def typed(question: Question, answer: dict[str, Any]) -> dict[str, list[str]]:
    """What a browser sends for an answer."""
    return {ask.name: ask.typed(answer[ask.name]) for ask in question.asks}


def sent(asked: Asked, answer: dict[str, Any]) -> dict[str, list[str]]:
    return typed(asked.as_question(), answer)
