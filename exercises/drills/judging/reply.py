"""One reply among several: how it is asked, what believers choose, and how it is judged."""

from collections.abc import Collection, Mapping, Sequence
from typing import Any, Protocol

from exercises.drills.asks import Choice, Option
from exercises.drills.beliefs.telling_apart import Believed, explained, told_apart
from exercises.drills.kind import Verdict
from exercises.drills.question import Question

NAME = "reply"
LETTERS = "abcd"
BESIDE = ("caution", "source")  # of the key, told with the verdict where a question has them


class Caught(Protocol):
    """What is asked about, with the replies that beliefs lead to."""

    @property
    def beliefs(self) -> list[str]: ...

    def believed(self, beliefs: Collection[str]) -> str: ...


def lettered(texts: Sequence[str]) -> dict[str, str]:
    """By reply, the letter that it has in this question."""
    return dict(zip(texts, LETTERS[: len(texts)], strict=True))


def ask(legend: str, texts: Mapping[str, str]) -> Choice:
    """The ask for one of these, by letter."""
    options = (Option(value=letter, text=text) for letter, text in texts.items())
    return Choice(name=NAME, legend=legend, options=tuple(options))


def believed(by: Caught, letters: Mapping[str, str]) -> Believed | None:
    """What believers answer, where any is caught; None where two would answer alike."""
    if not by.beliefs:
        return []
    return told_apart(by.beliefs, lambda held: {NAME: letters[by.believed(held)]})


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Right or wrong, with the reason against what was chosen and for what is right.

    Raises AnswerRefused for an answer that isn't one of the options.
    """
    chosen, best = (question.checked(each)[NAME] for each in (answer, question.right))
    right, whys = answer[NAME] == question.right[NAME], question.key["whys"]
    return Verdict(
        right=right,
        score=100 if right else 0,
        misconceptions=explained(question.believed, dict(answer)),
        feedback={
            "chosen": chosen,
            "right": best,
            "why_not": "" if right else whys[answer[NAME]],
            "why": whys[question.right[NAME]],
            **{name: question.key[name] for name in BESIDE if name in question.key},
        },
    )
