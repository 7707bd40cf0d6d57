"""How the position of a control is judged, with what else is asked, and what is shown then."""

from collections.abc import Iterator, Mapping, Sequence
from statistics import mean
from typing import Any

from exercises.drills.asks import Dial, Json
from exercises.drills.judging.parts import counted, parts
from exercises.drills.kind import Verdict
from exercises.drills.kinds.knobs.aim import Aim
from exercises.drills.kinds.knobs.copy import Copy
from exercises.drills.kinds.knobs.turn import remark
from exercises.drills.question import Question


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Right where every choice is, and the control is inside the band.

    Raises AnswerRefused for what can't be answered.
    """
    question.checked(answer)
    return graded(question, answer, question.key["makings"][answer[dial_of(question).name]])


def graded(question: Question, answer: Mapping[str, Any], making: Json) -> Verdict:
    """The verdict on an answer by which the copy is made so. Every ask counts alike."""
    aim, position = Aim.from_json(question.key["aim"]), answer[dial_of(question).name]
    near, choices = aim.is_right(position), list(choices_of(question, answer))
    beliefs = question.revealed(answer)
    marks = [aim.score(position), *(100 * choice["is_right"] for choice in choices)]
    return Verdict(
        right=near and all(choice["is_right"] for choice in choices),
        score=round(mean(marks)),
        misconceptions=beliefs,
        feedback={
            "choices": choices,
            "credit": credit(aim.score(position), choices),
            **settings(question, position),
            "remark": "" if near or beliefs else turned(question, position),
            **consequences(question, making, is_near=near),
        },
    )


def near(question: Question, name: str, given: Any, expected: Any) -> bool:
    """Positions within the band of the right one are right; so it is beside one that is not."""
    if name != dial_of(question).name:
        return bool(given == expected)
    aim = Aim.from_json(question.key["aim"])
    if aim.is_right(given) or aim.is_right(expected):
        return aim.is_right(given) and aim.is_right(expected)
    return bool(abs(aim.values[given] - aim.values[expected]) <= aim.band)


def credit(setting: int, choices: Sequence[Json]) -> str:
    """Why the score is what it is; empty where the setting alone counts, all of it or nothing."""
    found = []
    if 0 < setting < 100:
        found.append(f"The setting is not right, but not far from it: it counts {setting} %.")
    if choices:
        rights = sum([setting == 100, *(choice["is_right"] for choice in choices)])
        found.append(counted(rights, 1 + len(choices)))
    return " ".join(found)


def dial_of(question: Question) -> Dial:
    return next(ask for ask in question.asks if isinstance(ask, Dial))


def choices_of(question: Question, answer: Mapping[str, Any]) -> Iterator[Json]:
    """What else was asked, what was chosen, and what is right."""
    for ask, part in zip(question.asks, parts(question, answer), strict=True):
        if not isinstance(ask, Dial):
            yield part


def settings(question: Question, position: int) -> Json:
    """The learner's setting and the best one, in words and in the model's units."""
    ask = dial_of(question)
    units, best = question.key["units"], question.right[ask.name]
    named = [("The setting chosen", position), ("The best setting", best)]
    return {
        "settings": [
            {"name": name, "position": each, "told": ask.in_words(each), "unit": units[each]}
            for name, each in (
                named if position != best else [("The setting chosen, the best", best)]
            )
        ],
        "why": question.key["why"],
    }


def turned(question: Question, position: int) -> str:
    """What went wrong in turning, where anything can be said of it."""
    return remark(question.key["start"], question.right[dial_of(question).name], position)


def consequences(question: Question, making: Json, *, is_near: bool) -> Json:
    """What the tape model makes of a copy with this setting."""
    copy = Copy(question.key["session"], making)
    passes = "The copy has no fault." if is_near else question.key["passes"]
    return {
        "happened": copy.sentences() or [passes],
        "map": copy.map(),
        "caption": "The edit master, copied with the setting chosen",
    }
