"""A task that an instructor writes and that is answered by a picture, which they look at."""

import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from typing import Any, Self

from exercises.drills.asks import Json, SentPicture
from exercises.drills.kind import Verdict
from exercises.drills.question import Question

NAME = "picture"


@dataclass(frozen=True, slots=True, kw_only=True)
class PictureTask:
    """`rubric` is what the instructor looks for; whoever answers sees it."""

    task: str
    rubric: tuple[str, ...]

    def as_json(self) -> Json:
        kept: Json = json.loads(json.dumps(asdict(self)))  # lists for tuples, as it comes back
        return kept

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        return cls(task=stored["task"], rubric=tuple(stored["rubric"]))


def question(pictured: PictureTask, *, skill: str, situation: str) -> Question:
    return Question(
        situation=situation,
        skill=skill,
        asks=(SentPicture(name=NAME, legend="Your picture", rubric=pictured.rubric),),
        shown={"task": pictured.task},
        right={},
        key={"rubric": list(pictured.rubric)},
    )


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """No judgement: it waits for somebody to look at it. AnswerRefused for what is no answer."""
    question.checked(answer)
    return Verdict.waiting(rubric=question.key["rubric"])
