"""Care and safety: people first, then machines and tape."""

from exercises.drills.asks import Json
from exercises.drills.judging import reply
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.care_and_safety.case import CareCase
from exercises.drills.kinds.care_and_safety.cases import CASES
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.quay_street import ACTIONS, TAPES
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where believers would answer alike."""
    return question(draw.pick(CASES), Scene(draw, settings))


def question(case: CareCase, scene: Scene) -> Question | None:
    words = drawn(case, scene)
    letters = reply.lettered(scene.draw.shuffled(list(case.whys)))
    believed = reply.believed(case, letters)
    if believed is None:
        return None
    texts = {letter: begun(text.format(**words)) for text, letter in letters.items()}
    return Question(
        situation=case.name.replace(" ", "-"),
        skill=case.rule.skill,
        asks=(reply.ask(case.wish.format(**words), texts),),
        shown={"story": f"{opening(scene)} {begun(case.story.format(**words))}"},
        right={"reply": letters[case.right]},
        rule=case.rule.at(scene.bench),
        believed=believed,
        key={
            "whys": {letters[text]: why.format(**words) for text, why in case.whys.items()},
            "caution": case.caution,
            "source": case.source,
        },
    )


def drawn(case: CareCase, scene: Scene) -> Json:
    """What stands for the names in a case’s texts."""
    return {
        "tape": scene.draw.pick(TAPES),
        "shot": scene.draw.pick(ACTIONS).picture,
        "person": scene.person,
        "room": scene.room,
        **case.figures(scene.draw),
    }


KIND = Kind(
    slug=slug_of(__name__),
    title="Care and safety",
    purpose="Cold, damp, magnets, mains, lifting, a stuck tape: what do you do?",
    skills=("care-and-safety",),
    lesson="finishing",
    revision=4,
    template="drills/judging/reply.html",
    candidate=candidate,
    grade=reply.grade,
)
