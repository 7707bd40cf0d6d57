"""A task that an instructor writes and whose answers they read: some sentences."""

import json
from dataclasses import asdict, dataclass
from typing import Self

from exercises.drills.asks import FreeText, Json
from exercises.drills.question import Question


@dataclass(frozen=True, slots=True, kw_only=True)
class WrittenTask:
    """`rubric` is what the reader looks for; whoever answers sees it. Lengths in characters."""

    task: str
    rubric: tuple[str, ...]
    least: int
    most: int

    def as_json(self) -> Json:
        kept: Json = json.loads(json.dumps(asdict(self)))  # lists for tuples, as it comes back
        return kept

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        return cls(**{**stored, "rubric": tuple(stored["rubric"])})


def question(written: WrittenTask, *, skill: str, situation: str) -> Question:
    ask = FreeText(
        name="text",
        legend="The answer, in your own words",
        least=written.least,
        most=written.most,
        rubric=written.rubric,
    )
    return Question(
        situation=situation,
        skill=skill,
        asks=(ask,),
        shown={"task": written.task},
        right={},
        key={"rubric": list(written.rubric)},
    )
