"""Right and wrong answers to a question, found by asking its kind about every one."""

from collections.abc import Iterator
from itertools import product
from typing import Any

from exercises.drills.kind import Kind, Question
from exercises.models import Asked


def every_answer(question: Question) -> Iterator[dict[str, Any]]:
    names = [ask.name for ask in question.asks]
    for values in product(*(ask.every() for ask in question.asks)):
        yield dict(zip(names, values, strict=True))


def first_answer(kind: Kind, question: Question, *, right: bool) -> dict[str, Any]:
    """The first possible answer that the kind judges so."""
    return next(a for a in every_answer(question) if kind.grade(question, a).right is right)


def right_answer(asked: Asked) -> dict[str, Any]:
    return first_answer(asked.kind, asked.as_question(), right=True)


def wrong_answer(asked: Asked) -> dict[str, Any]:
    return first_answer(asked.kind, asked.as_question(), right=False)
