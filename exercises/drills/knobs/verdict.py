"""How the position of a control is judged, and what is shown then."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.kind import Question, Verdict
from exercises.drills.knobs.aim import Aim
from exercises.drills.knobs.copy import Copy
from exercises.drills.knobs.turn import remark
from exercises.mastery.misconceptions import MISCONCEPTIONS


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Right inside the band. Raises AnswerRefused where the control can't stand so."""
    question.checked(answer)
    (ask,) = question.asks
    position: int = answer[ask.name]
    aim = Aim.from_json(question.key["aim"])
    right = aim.is_right(position)
    beliefs = () if right else question.revealed(answer)
    return Verdict(
        right=right,
        score=aim.score(position),
        misconceptions=beliefs,
        feedback={
            **settings(question, position),
            "remark": "" if right or beliefs else turned(question, position),
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            **consequences(question, position),
            "rule": question.key["rule"],
        },
    )


def settings(question: Question, position: int) -> Json:
    """The learner's setting and the best one, in words and in the model's units."""
    (ask,) = question.asks
    best: int = question.right[ask.name]
    units = question.key["units"]
    return {
        "settings": [
            {"name": name, "position": each, "told": ask.in_words(each), "unit": units[each]}
            for name, each in (("Your setting", position), ("The best setting", best))
        ],
        "why": question.key["why"],
    }


def turned(question: Question, position: int) -> str:
    """What else went wrong in turning; nothing where there was no way to turn."""
    (ask,) = question.asks
    start = question.key["start"]
    return "" if start is None else remark(start, question.right[ask.name], position)


def consequences(question: Question, position: int) -> Json:
    """What the tape model makes of a copy with this setting."""
    copy = Copy(question.key["session"], question.key["makings"][position])
    is_right = Aim.from_json(question.key["aim"]).is_right(position)
    passes = "The copy has no fault." if is_right else question.key["passes"]
    return {
        "happened": copy.sentences() or [passes],
        "map": copy.map(),
        "caption": "The edit master, copied with your setting",
    }
