"""How a setting of the sound level is judged: the copy is made in the mode that was chosen."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from exercises.drills.kind import Question, Verdict
from exercises.drills.knobs.verdict import dial_of, graded
from exercises.drills.set_sound_level.heard import number
from exercises.drills.set_sound_level.modes import MODES, setting


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for what can't be answered."""
    question.checked(answer)
    mode, position = answer[MODES.name], answer[dial_of(question).name]
    gain = question.key["makings"][position]["sound_level"]["gain"]
    verdict = graded(question, answer, setting(mode, gain))
    best = len(question.media) - 1
    clips = [best] if verdict.right else [number(position, mode), best]
    return replace(verdict, feedback={**verdict.feedback, "clips": clips})
