"""Free answer: some sentences for the instructor to read."""

from collections.abc import Mapping
from typing import Any

from exercises.drills.asks import FreeText
from exercises.drills.kind import Kind, Verdict, slug_of
from exercises.drills.kinds.free_answer.prompts import PROMPTS, Prompt
from exercises.drills.question import Question
from exercises.drills.setting import quay_street
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

LEAST, MOST = 80, 2000  # characters


def candidate(draw: Draw, settings: Settings) -> Question:
    return question(draw.pick(PROMPTS), Scene(draw, settings))


def question(prompt: Prompt, scene: Scene) -> Question:
    others = [person for person in quay_street.PEOPLE if person != scene.person]
    task = prompt.task.format(
        other=scene.draw.pick(others),
        shot=scene.draw.pick(quay_street.ACTIONS).picture,
        talk=scene.draw.pick(quay_street.TALKS).picture,
        code=scene.code(scene.seconds(60, 600)),
    )
    return Question(
        situation=prompt.name.replace(" ", "-"),
        skill=prompt.rule.skill,
        asks=(
            FreeText(
                name="text",
                legend="The answer, in your own words",
                least=LEAST,
                most=MOST,
                rubric=prompt.rubric,
            ),
        ),
        shown={"story": opening(scene), "task": begun(task)},
        right={},
        rule=prompt.rule.at(scene.bench),
        key={"rubric": list(prompt.rubric)},
    )


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Kept, and waiting. Raises AnswerRefused for a text that is too short or too long."""
    text = question.checked(answer)["text"]
    return Verdict.waiting(text=text, rubric=question.key["rubric"])


KIND = Kind(
    slug=slug_of(__name__),
    title="In your own words",
    purpose="Explain, propose or hand over: your instructor reads what you write.",
    skills=(
        "replacing-inside-it",
        "tracks-and-pulses",
        "run-up",
        "what-the-bench-cant-do",
        "planning-and-time-code",
        "sound-level",
        "player-set-up",
        "mending",
        "recorder-set-up",
        "what-a-copy-is",
    ),
    lesson="",
    revision=2,
    template="drills/kinds/free_answer.html",
    candidate=candidate,
    grade=grade,
    by_hand=True,
)
