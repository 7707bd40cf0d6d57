"""How a step is judged, and what the copy is like if tracking is left alone."""

from collections.abc import Iterator, Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.kind import Question, Verdict
from exercises.drills.knobs.copy import Copy
from exercises.drills.parts import parts
from exercises.drills.watch_it_drift.minute import STEPS
from exercises.drills.watch_it_drift.question import NEVER, place
from exercises.mastery.misconceptions import MISCONCEPTIONS

BESIDE = 50  # hundredths for the step before, or the one after


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Right at the first step with a noise band. Raises AnswerRefused for what is no step."""
    question.checked(answer)
    chosen, right = answer["step"], question.right["step"]
    beliefs = question.revealed(answer)
    copy = Copy(question.key["session"], {})
    return Verdict(
        right=chosen == right,
        score=score(chosen, right),
        misconceptions=beliefs,
        feedback={
            "parts": list(parts(question, answer)),
            "settings": list(looks(question, chosen, right)),
            "verdict": said(right),
            "credit": "A step beside the right one counts for half."
            if score(chosen, right) == BESIDE
            else "",
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            "happened": copy.sentences() or ["The copy has no fault."],
            "map": copy.map(),
            "caption": "The edit master, if nobody touches the tracking",
            "rule": question.key["rule"],
        },
    )


def score(chosen: str, right: str) -> int:
    if chosen == right:
        return 100
    near = NEVER not in (chosen, right) and abs(int(chosen) - int(right)) == 1
    return BESIDE if near else 0


def said(right: str) -> str:
    if right == NEVER:
        return "No step shows a noise band: tracking wandered, but within what passes."
    return f"{place(int(right) - 1)}, is the first that shows a noise band."


def looks(question: Question, chosen: str, right: str) -> Iterator[Json]:
    """The step that was chosen and the right one; the last, where there is none to show."""
    last = str(STEPS)
    wanted = "The first that asks for it" if right != NEVER else "The last step"
    named = {right if right != NEVER else last: wanted}
    if chosen not in (NEVER, right):
        named = {chosen: "The step chosen"} | named
    for step, name in named.items():
        position = int(step) - 1
        told = place(position)
        unit = question.key["units"][position]
        yield {"name": name, "position": position, "told": told, "unit": unit}
