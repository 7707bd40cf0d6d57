"""Care and safety: people first, then machines and tape."""

from exercises.drills.asks import Choice, Json, Option
from exercises.drills.beliefs.telling_apart import told_apart
from exercises.drills.kind import Believed, Kind, Question, slug_of
from exercises.drills.kinds.care_and_safety.case import CareCase
from exercises.drills.kinds.care_and_safety.cases import CASES
from exercises.drills.kinds.care_and_safety.verdict import grade
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.quay_street import ACTIONS, TAPES
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

LETTERS = "abcd"


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where believers would answer alike."""
    return question(draw.pick(CASES), Scene(draw, settings))


def question(case: CareCase, scene: Scene) -> Question | None:
    words = drawn(case, scene)
    letters = dict(zip(scene.draw.shuffled(list(case.whys)), LETTERS, strict=True))
    beliefs = believed(case, letters)
    if beliefs is None:
        return None
    texts = {letter: text.format(**words) for text, letter in letters.items()}
    options = tuple(Option(value=letter, text=begun(text)) for letter, text in texts.items())
    return Question(
        situation=case.name.replace(" ", "-"),
        skill=case.rule.skill,
        asks=(Choice(name="reply", legend=case.wish.format(**words), options=options),),
        shown={"story": f"{opening(scene)} {begun(case.story.format(**words))}"},
        right={"reply": letters[case.right]},
        rule=case.rule.at(scene.bench),
        believed=beliefs,
        key={
            "whys": {letters[text]: why.format(**words) for text, why in case.whys.items()},
            "caution": case.caution,
            "source": case.source,
        },
    )


def believed(case: CareCase, letters: dict[str, str]) -> Believed | None:
    """What believers answer, where beliefs have answers; None where two would answer alike."""
    if not case.held:
        return []
    return told_apart(case.beliefs, lambda held: {"reply": letters[case.believed(held)]})


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
    grade=grade,
)
