"""Can this bench do it? What two machines can do, how, or what to propose instead."""

from exercises.drills.asks import Json
from exercises.drills.judging import reply
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import EFFECTS
from exercises.drills.question import Question
from exercises.drills.setting import quay_street
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where believers would answer alike."""
    return question(draw.pick(EFFECTS), Scene(draw, settings))


def question(effect: Effect, scene: Scene) -> Question | None:
    letters = reply.lettered(effect.texts(scene.draw))
    believed = reply.believed(effect, letters)
    if believed is None:
        return None
    texts = {letter: text for text, letter in letters.items()}
    return Question(
        situation=effect.name.replace(" ", "-"),
        skill=effect.skill or effect.rule.skill,
        asks=(reply.ask("Can this bench do it, and how?", texts),),
        shown={
            "story": opening(scene),
            "wish": begun(effect.wish.format(**drawn(scene))),
            "bench": f"{scene.room}: a player, a recorder; a mixer for sound, none for pictures.",
        },
        right={"reply": letters[effect.right]},
        rule=effect.rule.at(scene.bench),
        believed=believed,
        key={
            "whys": {letter: effect.whys[text] for text, letter in letters.items()},
        },
    )


def drawn(scene: Scene) -> Json:
    """What stands for the names in a wish."""
    return {
        "person": scene.person,
        "room": scene.room,
        "tape": scene.draw.pick(quay_street.TAPES),
        "shot": scene.draw.pick(quay_street.ACTIONS).picture,
        "talk": scene.draw.pick(quay_street.TALKS).picture,
        "sound": scene.draw.pick(quay_street.SOUNDS).sound,
        "card": scene.draw.pick(quay_street.CARDS).picture,
        "code": scene.code(scene.seconds(60, 600)),
        "title": scene.draw.pick(quay_street.TITLES).picture,
    }


KIND = Kind(
    slug=slug_of(__name__),
    title="Can this bench do it?",
    purpose="An effect is asked for: can it be done, how, or what do you propose instead?",
    skills=(
        "what-the-bench-cant-do",
        "replacing-inside-it",
        "tracks-and-pulses",
        "continuing-a-master",
        "player-set-up",
        "recorder-set-up",
        "what-a-copy-is",
    ),
    lesson="what-this-bench-cannot-do",
    revision=7,
    template="drills/judging/reply.html",
    candidate=candidate,
    grade=reply.grade,
)
