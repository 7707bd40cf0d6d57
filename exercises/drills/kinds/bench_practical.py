"""A bench practical: a task at the machines, and what the learner reports of it.

The task is written by an instructor and comes with the question; nothing is drawn.
"""

from collections.abc import Mapping
from typing import Any

from exercises.drills.asks import FreeText
from exercises.drills.judging.rules import Rule
from exercises.drills.kind import Kind, Verdict, slug_of
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.settings import Settings

LEAST, MOST = 20, 4000  # characters
RUBRIC = (
    "what you did, in order, with the time codes of each edit;",
    "what you saw and heard when you played it back;",
    "what you would do otherwise next time.",
)
RULE = Rule(
    text="Your instructor looks at the tape with you. Until then the report waits.",
    skill="planning-and-time-code",
    lesson="",
    section="",
)


def practical(title: str, task: str) -> Question:
    """The question that asks for the report of one practical."""
    return Question(
        situation="practical",
        skill=RULE.skill,
        asks=(FreeText(name="text", legend="The report", least=LEAST, most=MOST, rubric=RUBRIC),),
        shown={"title": title, "task": task},
        right={},
        rule=RULE.as_json(),
    )


def candidate(draw: Draw, settings: Settings) -> Question:
    """No practical is drawn by chance: whatever the seed, it is the one without a task."""
    return practical("A bench practical", "Your instructor gives the task.")


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Kept, and waiting. Raises AnswerRefused for a text that is too short or too long."""
    text = question.checked(answer)["text"]
    return Verdict.waiting(text=text)


KIND = Kind(
    slug=slug_of(__name__),
    title="Bench practical",
    purpose="A task at the machines; your instructor reads your report and looks at the tape.",
    skills=(RULE.skill,),
    lesson="",
    revision=1,
    template="drills/kinds/bench_practical.html",
    candidate=candidate,
    grade=grade,
    by_hand=True,
)
