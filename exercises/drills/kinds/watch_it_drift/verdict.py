"""How a take is judged, and what the copies are like if tracking is left alone."""

from collections.abc import Iterator, Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.judging.parts import parts
from exercises.drills.kind import Verdict
from exercises.drills.kinds.knobs.copy import Copy
from exercises.drills.kinds.watch_it_drift.rehearsals import NEVER, TAKES, place
from exercises.drills.question import Question


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Right at the first take with fine noise. Raises AnswerRefused for what is no take."""
    question.checked(answer)
    chosen, right = answer["step"], question.right["step"]
    beliefs = question.revealed(answer)
    copy = Copy(question.key["session"], {})
    return Verdict(
        right=chosen == right,
        score=100 if chosen == right else 0,
        misconceptions=beliefs,
        feedback={
            "parts": list(parts(question, answer)),
            "settings": list(looks(question, chosen, right)),
            "verdict": " ".join(said(right, question.key["band"])),
            "happened": copy.sentences() or ["The copies have no fault."],
            "map": copy.map(),
            "caption": "The edit master, if nobody touches the tracking",
        },
    )


def said(right: str, band: int | None) -> Iterator[str]:
    """What asks for a hand, and what comes of waiting for more than that."""
    if right == NEVER:
        yield "No take shows more than a trace of fine noise: tracking fits them all."
        return
    yield f"{place(int(right) - 1)} is the first with fine noise: touch the tracking there."
    if band is not None:
        yield (
            f"Anyone who waits for streaks touches it at {place(band).lower()} only, "
            "with a noise band in the picture by then."
        )


def looks(question: Question, chosen: str, right: str) -> Iterator[Json]:
    """The take that was chosen and the right one; the last, where there is none to show."""
    last = str(TAKES)
    wanted = "The first that asks for it" if right != NEVER else "The last take"
    named = {right if right != NEVER else last: wanted}
    if chosen not in (NEVER, right):
        named = {chosen: "The take chosen"} | named
    for step, name in named.items():
        position = int(step) - 1
        told = place(position)
        unit = question.key["units"][position]
        yield {"name": name, "position": position, "told": told, "unit": unit}
