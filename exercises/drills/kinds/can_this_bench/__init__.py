"""Can this bench do it? What two machines can do, how, or what to propose instead."""

from exercises.drills.asks import Choice, Json, Option
from exercises.drills.beliefs.telling_apart import told_apart
from exercises.drills.kind import Believed, Kind, Question, slug_of
from exercises.drills.kinds.can_this_bench.effect import Effect
from exercises.drills.kinds.can_this_bench.effects import EFFECTS
from exercises.drills.kinds.can_this_bench.verdict import grade
from exercises.drills.setting import quay_street
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

LETTERS = "abcd"


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where believers would answer alike."""
    return question(draw.pick(EFFECTS), Scene(draw, settings))


def question(effect: Effect, scene: Scene) -> Question | None:
    letters = dict(zip(effect.texts(scene.draw), LETTERS, strict=True))
    beliefs = believed(effect, letters)
    if beliefs is None:
        return None
    options = tuple(Option(value=letter, text=text) for text, letter in letters.items())
    return Question(
        situation=effect.name.replace(" ", "-"),
        skill=effect.skill or effect.rule.skill,
        asks=(Choice(name="reply", legend="Can this bench do it, and how?", options=options),),
        shown={
            "story": opening(scene),
            "wish": begun(effect.wish.format(**drawn(scene))),
            "bench": f"{scene.room}: a player, a recorder; a mixer for sound, none for pictures.",
        },
        right={"reply": letters[effect.right]},
        rule=effect.rule.at(scene.bench),
        believed=beliefs,
        key={
            "whys": {letter: effect.whys[text] for text, letter in letters.items()},
        },
    )


def believed(effect: Effect, letters: dict[str, str]) -> Believed | None:
    """What believers answer, where beliefs have answers; None where two would answer alike."""
    if not effect.held:
        return []
    return told_apart(effect.beliefs, lambda held: {"reply": letters[effect.believed(held)]})


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
    grade=grade,
)
