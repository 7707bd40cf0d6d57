"""How an order is judged: by the rules it keeps, not by one order."""

from collections.abc import Mapping, Sequence
from typing import Any

from exercises.drills.kind import Verdict
from exercises.drills.kinds.put_in_order.procedure import Procedure
from exercises.drills.question import Question
from exercises.drills.setting.phrases import begun


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Raises AnswerRefused for an order of anything but the question's steps."""
    question.checked(answer)
    procedure, order = Procedure.from_json(question.key["procedure"]), answer["order"]
    wrong = mistakes(procedure, order)
    score = procedure.score(order)
    beliefs = tuple(procedure.shown_by(order))
    return Verdict(
        right=not wrong,
        score=score,
        misconceptions=beliefs,
        feedback={
            "chosen": told(procedure, order),
            "works": told(procedure, procedure.order),
            "mistakes": wrong,
            "move": told(procedure, procedure.out_of_place(order)),
            "credit": credit(score, wrong),
        },
    )


def near(question: Question, name: str, given: Any, expected: Any) -> bool:
    """Orders with the same mistakes come to the same; so do those without any."""
    procedure = Procedure.from_json(question.key["procedure"])
    return mistakes(procedure, given) == mistakes(procedure, expected)


def told(procedure: Procedure, order: Sequence[str]) -> list[str]:
    return [begun(procedure.texts[step]) for step in order]


def mistakes(procedure: Procedure, order: Sequence[str]) -> list[list[str]]:
    """Each mistake, and why it is one."""
    texts = {step: begun(text) for step, text in procedure.texts.items()}
    return [
        *(
            [f"“{texts[rule.first]}” has to come before “{texts[rule.then]}”.", rule.why]
            for rule in procedure.broken(order)
        ),
        *(
            [f"“{texts[step]}” is left out.", procedure.why_not_without(step)]
            for step in procedure.missing(order)
        ),
        *(
            [f"“{texts[step]}” does not belong here.", f"Because {procedure.decoys[step][1]}."]
            for step in procedure.needless(order)
        ),
    ]


def credit(score: int, wrong: Sequence[Any]) -> str:
    """Why the score is what it is; empty for an order without mistakes."""
    if not wrong:
        return ""
    if not score:
        return "No part counts, because a tape would have been spoiled."
    return (
        f"{score} % of what the work asks for is kept: each rule of order counts once, so does "
        "each step that belongs here, and each that you left out rightly."
    )
