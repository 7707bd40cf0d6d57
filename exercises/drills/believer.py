"""The answer that somebody with given beliefs would give."""

from collections.abc import Collection

from exercises.drills.kind import Question


def believed(question: Question, beliefs: Collection[str]) -> dict[str, str]:
    """Right wherever no belief leads astray.

    An option that points at several misconceptions is chosen by whoever holds them all.
    """
    answer = dict(question.right)
    for name, reveals in question.reveals.items():
        tempting = (value for value, held in reveals.items() if set(held) <= set(beliefs))
        answer[name] = next(tempting, answer[name])
    return answer
