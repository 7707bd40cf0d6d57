"""The answer that somebody with given beliefs would give."""

from collections.abc import Collection
from itertools import islice
from typing import Any

from exercises.drills import telling_apart
from exercises.drills.kind import Question


def believed(question: Question, beliefs: Collection[str]) -> dict[str, Any]:
    """Right wherever no belief leads astray.

    Where a question keeps what is answered under every subset of beliefs, that is looked up.
    An option that points at several misconceptions is chosen by whoever holds them all.
    """
    if question.believed:
        return telling_apart.believed(question.believed, beliefs)
    answer = dict(question.right)
    for ask in question.asks:
        reveals = question.reveals.get(ask.name, {})
        tempting = (value for value, held in reveals.items() if set(held) <= set(beliefs))
        for value in islice(tempting, 1):
            answer[ask.name] = ask.read([value])
    return answer


def touched(question: Question) -> list[str]:
    """The beliefs that alone lead to a wrong answer."""
    held = [subset for subset, _ in question.believed]
    held += [beliefs for reveals in question.reveals.values() for beliefs in reveals.values()]
    return list(dict.fromkeys(beliefs[0] for beliefs in held if len(beliefs) == 1))
