"""How a setting of the sound level is judged, and what is to be heard of it."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from exercises.drills.kind import Question, Verdict
from exercises.drills.kinds.knobs.verdict import dial_of, graded
from exercises.drills.kinds.set_sound_level.heard import number


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for what can't be answered."""
    question.checked(answer)
    position = answer[dial_of(question).name]
    verdict = graded(question, answer, question.key["makings"][position])
    other, best = len(question.media) - 2, len(question.media) - 1
    near = [] if position == question.right[dial_of(question).name] else [number(position)]
    return replace(verdict, feedback={**verdict.feedback, "clips": [*near, other, best]})
