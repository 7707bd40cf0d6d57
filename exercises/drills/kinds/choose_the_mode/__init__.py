"""Choose the mode: which recording makes a wanted change, if any does?"""

from exercises.drills.asks import Json
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.choose_the_mode.answers import ASK, revealed, right_answers
from exercises.drills.kinds.choose_the_mode.consequences import consequences, expectations
from exercises.drills.kinds.choose_the_mode.scenario import Scenario
from exercises.drills.kinds.choose_the_mode.situations import DRAWN, Situation
from exercises.drills.kinds.choose_the_mode.verdict import grade
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.phrases import listed
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings
from exercises.tape import tape_map

MARGIN = 20  # seconds of tape that a map shows on either side of the edit


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where more than one answer is right."""
    return question(draw.pick(DRAWN), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    scenario = situation(scene)
    right, *others = right_answers(scenario.task)
    if others:
        return None
    reveals = revealed(scenario.task, right)
    return Question(
        situation=slug_of(situation.__name__),
        skill=scenario.rule.skill,
        asks=(ASK,),
        shown=shown(scenario),
        right={"mode": right},
        reveals={"mode": reveals},
        rule=scenario.rule.at(scenario.task.bench),
        key={
            **key(scenario),
            "expected": expectations(scenario.task, right, reveals, window(scenario)),
        },
    )


def shown(scenario: Scenario) -> Json:
    scene = scenario.scene
    start, end = window(scenario)
    around = tape_map(
        scenario.task.master,
        scenario.task.bench,
        start=start,
        end=end,
        marks=marks(scenario),
        faults=False,
    )
    return {
        "story": f"{opening(scene)} {scenario.story}",
        "wish": scenario.wish,
        "facts": facts(scenario),
        "map": around.as_json(),
        "caption": f"The edit master before the change, {scene.span(start, end)}.",
    }


def facts(scenario: Scenario) -> list[list[str]]:
    """What to look up before an edit: pairs of a term and its value."""
    scene, clip, change = scenario.scene, scenario.clip, scenario.task.change
    return [
        ["Source", f"{clip.tape}: {clip.shot.picture}. Heard with it: {clip.shot.sound}."],
        ["The take runs", listed([scene.span(*take) for take in clip.takes])],
        ["Edit in and out there", scene.span(clip.in_, clip.out)],
        [
            "On the edit master",
            f"{scene.span(change.at, change.end)}, {scene.lasting(clip.length)}",
        ],
        [
            "Bench",
            f"{scene.room}, {scene.rate.label} frames a second, {scene.pre_roll}",
        ],
    ]


def marks(scenario: Scenario) -> dict[str, int]:
    return {"edit in": scenario.task.change.at, "edit out": scenario.task.change.end}


def window(scenario: Scenario) -> tuple[int, int]:
    """The part of the master that maps show."""
    margin = MARGIN * scenario.scene.rate.nominal
    change = scenario.task.change
    return max(0, change.at - margin), min(scenario.scene.length, change.end + margin)


def key(scenario: Scenario) -> Json:
    start, end = window(scenario)
    return {
        "session": scenario.document,
        "change": scenario.task.change.as_json(),
        "wants": [want.as_json() for want in scenario.task.wants],
        "told": consequences(scenario.task, (start, end)),
        "before_caption": f"Before, {scenario.scene.span(start, end)}",
        "instead": scenario.instead,
    }


KIND = Kind(
    slug=slug_of(__name__),
    title="Choose the mode",
    purpose="An edit master and a wanted change: assemble, insert, or is it impossible here?",
    skills=(
        "continuing-a-master",
        "replacing-inside-it",
        "tracks-and-pulses",
        "run-up",
        "what-the-bench-cant-do",
    ),
    lesson="assemble-and-insert",
    revision=4,
    template="drills/kinds/choose_the_mode.html",
    candidate=candidate,
    grade=grade,
)
