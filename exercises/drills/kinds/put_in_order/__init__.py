"""Put the steps in order: what must come before what, and what does not belong at all."""

from exercises.drills.asks import Json, Option, Order
from exercises.drills.beliefs.telling_apart import Believed, told_apart
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.put_in_order.procedure import Procedure
from exercises.drills.kinds.put_in_order.procedures import drawn
from exercises.drills.kinds.put_in_order.verdict import grade, near
from exercises.drills.question import Question
from exercises.drills.setting import quay_street
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

ORDER = "order"


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where believers would answer alike."""
    return question(drawn(draw), Scene(draw, settings))


def question(drawn: Procedure, scene: Scene) -> Question | None:
    procedure = drawn.told(names(scene))
    beliefs = believed(procedure)
    if beliefs is None:
        return None
    steps = [Option(value=step, text=begun(text)) for step, text in procedure.texts.items()]
    return Question(
        situation=procedure.name.replace(",", "").replace(" ", "-"),
        skill=procedure.rule.skill,
        asks=(
            Order(
                name=ORDER,
                legend="Give each step its position; leave out what does not belong.",
                steps=tuple(scene.draw.shuffled(steps)),
            ),
        ),
        shown={
            "story": opening(scene),
            "task": procedure.task,
            "bench": f"Pre-roll here: {scene.lasting(scene.settings.pre_roll)}.",
        },
        right={ORDER: procedure.order},
        rule=procedure.rule.at(scene.bench),
        believed=beliefs,
        key={
            "procedure": procedure.as_json(),
        },
    )


def believed(procedure: Procedure) -> Believed | None:
    """What believers would do, if any is caught; None where two would do alike."""
    if not procedure.flaws:
        return []
    return told_apart(
        [flaw.belief for flaw in procedure.flaws],
        lambda beliefs: {ORDER: procedure.believed(beliefs)},
    )


def names(scene: Scene) -> Json:
    """What stands for the names in a procedure’s texts."""
    at = scene.seconds(150, 500)
    return {
        "tape": scene.draw.pick(quay_street.TAPES),
        "shot": scene.draw.pick(quay_street.ACTIONS).picture,
        "sound": scene.draw.pick(quay_street.TALKS).sound,
        "code": scene.code(at),
    }


KIND = Kind(
    slug=slug_of(__name__),
    title="Put the steps in order",
    purpose="Set up, edit, lay a leader, end a session: what comes first, what is left out?",
    skills=(
        "care-and-safety",
        "player-set-up",
        "recorder-set-up",
        "picture-level",
        "sound-level",
        "run-up",
        "tracks-and-pulses",
        "mending",
        "continuing-a-master",
        "replacing-inside-it",
        "what-a-copy-is",
        "planning-and-time-code",
    ),
    lesson="making-an-edit",
    revision=7,
    template="drills/kinds/put_in_order.html",
    candidate=candidate,
    grade=grade,
    near=near,
)
