"""Can this bench do it? An effect, and four answers to it."""

from collections.abc import Iterator

from exercises.drills import quay_street
from exercises.drills.asks import Choice, Json, Option
from exercises.drills.can_this_bench.changes import CHANGED
from exercises.drills.can_this_bench.copies import COPIED
from exercises.drills.can_this_bench.effect import Effect
from exercises.drills.can_this_bench.mixes import MIXED
from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.phrases import begun
from exercises.drills.scene import Scene, opening
from exercises.drills.settings import Settings
from exercises.drills.telling_apart import told_apart

EFFECTS = (*MIXED, *CHANGED, *COPIED)
LETTERS = "abcd"


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """What the seed draws, one after the other; None where believers would answer alike."""
    draw = Draw(seed)
    while True:
        yield question(draw.pick(EFFECTS), Scene(draw, settings))


def question(effect: Effect, scene: Scene) -> Question | None:
    letters = dict(zip(scene.draw.shuffled(effect.texts()), LETTERS, strict=True))
    kept = told_apart(
        effect.beliefs(), lambda beliefs: {"reply": letters[effect.believed(beliefs)]}
    )
    if kept is None:
        return None
    options = tuple(Option(value=letter, text=text) for text, letter in letters.items())
    whys = {letters[reply.text]: reply.why for reply in effect.replies}
    return Question(
        situation=effect.name.replace(" ", "-"),
        skill=effect.rule.skill,
        asks=(Choice(name="reply", legend="Can this bench do it?", options=options),),
        shown={
            "story": opening(scene),
            "wish": begun(scene.draw.pick(effect.wish).format(**drawn(scene))),
            "bench": f"{scene.room}: one player, one recorder, nothing between them but cables.",
        },
        right={"reply": letters[effect.right]},
        reveals={},
        key={
            "believed": kept,
            "whys": {**whys, letters[effect.right]: effect.because},
            "rule": effect.rule.at(scene.bench),
        },
    )


def drawn(scene: Scene) -> Json:
    """What stands for the names in a wish."""
    return {
        "person": scene.person,
        "room": scene.room,
        "shot": scene.draw.pick(quay_street.ACTIONS).picture,
        "talk": scene.draw.pick(quay_street.TALKS).picture,
        "sound": scene.draw.pick(quay_street.SOUNDS).sound,
        "card": scene.draw.pick(quay_street.CARDS).picture,
        "code": scene.code(scene.seconds(60, 600)),
    }
