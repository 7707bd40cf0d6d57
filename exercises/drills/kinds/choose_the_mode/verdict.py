"""How an answer to “choose the mode” is judged, and what is shown then.

All of it stands in the question's key, where the tape model put it.
"""

from collections.abc import Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.kind import Verdict
from exercises.drills.kinds.choose_the_mode.answers import CANNOT, OPTIONS
from exercises.drills.question import Question
from exercises.drills.setting.change import Mode

TEXTS = {option.value: option.text for option in OPTIONS}


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Right or wrong against the key; the tape model's facts tell what each recording does.

    Raises AnswerRefused for an answer that isn't one of the options.
    """
    question.checked(answer)
    chosen = answer["mode"]
    right = chosen == question.right["mode"]
    beliefs = question.revealed(answer)
    return Verdict(
        right=right,
        score=100 if right else 0,
        misconceptions=beliefs,
        feedback=_told(question, chosen),
    )


def _told(question: Question, chosen: str) -> Json:
    key, right = question.key, question.right["mode"]
    mine, best = (key["told"]["modes"].get(answer) for answer in (chosen, right))
    return {
        "chosen": TEXTS[chosen],
        "right": TEXTS[right],
        "happened": mine["happened"] if mine else [],
        "before": key["told"]["before"],
        "before_caption": key["before_caption"],
        "after": mine and mine["map"],
        "after_caption": f"After {TEXTS[chosen].lower()}",
        "expected": key.get("expected", {}).get(chosen),
        "instead": best["happened"] if best and chosen != right else [],
        "instead_map": best["map"] if best and chosen != right else None,
        "instead_caption": f"After {TEXTS[right].lower()}",
        "others": _others(key, chosen) if right == CANNOT else [],
        "advice": key["instead"] if right == CANNOT else "",
    }


def _others(key: Json, chosen: str) -> list[list[str]]:
    """Why the modes that were not chosen don't do it either: their names, the reason."""
    reasons: dict[str, list[str]] = {}
    for mode in Mode:
        if mode.value != chosen:
            reasons.setdefault(key["told"]["modes"][mode.value]["wrong"], []).append(mode.words)
    return [["; ".join(names).capitalize(), reason] for reason, names in reasons.items()]
