"""Sound with soft sentences in it, or with something sudden: set it, and what holds it then?"""

from collections.abc import Callable

from exercises.drills.judging.rules import LIMITER, SPEECH_BY_HAND
from exercises.drills.kinds.levels_on_paper.case import HOT, LevelsCase, Turn
from exercises.drills.kinds.levels_on_paper.holding import Heard, Holding, holding
from exercises.drills.kinds.levels_on_paper.scale import VU
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.quay_street import ACTIONS, TALKS, TAPES
from exercises.drills.setting.scene import Scene

SUDDEN = (5, 8)  # dB that a sudden sound lies over the words
READINGS = (*range(-14, -1), 2)  # VU: neither right already nor at the scale’s end

Story = Callable[[Scene], str]


def sound(scene: Scene) -> LevelsCase:
    """What is to come of it is drawn first, so that each comes as often as another."""
    ways, stories = scene.draw.pick(COMING)
    way, story = scene.draw.pick(ways), scene.draw.pick(stories)
    over = scene.draw.whole(*SUDDEN) if stories is SUDDENLY else 0
    reading = scene.draw.pick(READINGS)
    heard = story(scene) + (f" It would be about {over} dB louder than the words." if over else "")
    return LevelsCase(
        name=story.__name__.replace("_", "-"),
        story=heard,
        facts=(
            ("Meter", VU.name),
            ("As the knob stands", f"the loudest words: {VU.told(reading)}"),
        ),
        rule=LIMITER if way is Holding.LIMITER else SPEECH_BY_HAND,
        turn=Turn(scale=VU, reading=reading, lures={HOT: VU.end}),
        choosing=holding(scene.bench, Heard(10 * over), way),
    )


def talk_with_pauses(scene: Scene) -> str:
    return (
        f"{begun(scene.draw.pick(TALKS).sound)}, from {scene.draw.pick(TAPES)}: some sentences "
        "are a little softer than others, and the pauses have the room’s own sound in them."
    )


def talk_that_drops(scene: Scene) -> str:
    return (
        f"{begun(scene.draw.pick(TALKS).sound)}. Towards the end of every answer the voice drops "
        "a little, and then there is silence while the gulls go on outside."
    )


def night_in_the_hut(scene: Scene) -> str:
    return (
        f"In the hut at night, {scene.draw.pick(TALKS).sound}: half a whisper now and then, and a "
        "stove that is heard whenever nobody speaks."
    )


def narration(scene: Scene) -> str:
    return (
        f"Narration for {scene.draw.pick(ACTIONS).picture}, here and there with a softer "
        "sentence. Between the sentences a fan can just be heard."
    )


def speaker(told: str) -> str:
    return told.partition(" on ")[0].removesuffix(" saying goodbye")


def two_at_a_table(scene: Scene) -> str:
    told = [shot.sound for shot in scene.draw.shuffled(TALKS)]
    first = told[0]
    second = next(each for each in told if speaker(each) != speaker(first))
    return (
        f"Two voices in turn, in one take: {first}, then {second}. The second is a little softer, "
        "and each waits for the other to end."
    )


def bell_at_the_barrier(scene: Scene) -> str:
    return (
        f"{begun(scene.draw.pick(TALKS).sound)}, spoken beside the barrier. It is told only once, "
        "and at any moment the warning bell may ring."
    )


def horn_in_the_fog(scene: Scene) -> str:
    return (
        f"{begun(scene.draw.pick(TALKS).sound)}, spoken on the quay in fog. Sometime within the "
        "next minutes the ferry’s horn will sound beside the microphone."
    )


def laughter(scene: Scene) -> str:
    return (
        f"{begun(scene.draw.pick(TALKS).sound)}, told at an even level; but the listeners burst "
        "out laughing beside the microphone, and nobody knows when."
    )


def bolt_and_chain(scene: Scene) -> str:
    return (
        f"{begun(scene.draw.pick(TALKS).sound)}, spoken in the crank room, until the bolt falls "
        "with a crash that nobody can time."
    )


SOFTLY: tuple[Story, ...] = (
    talk_with_pauses,
    talk_that_drops,
    night_in_the_hut,
    narration,
    two_at_a_table,
)
SUDDENLY: tuple[Story, ...] = (bell_at_the_barrier, horn_in_the_fog, laughter, bolt_and_chain)

# Which ways and stories come to the same; each entry to something else.
COMING: tuple[tuple[tuple[Holding, ...], tuple[Story, ...]], ...] = (
    ((Holding.ALONE, Holding.LIMITER), SOFTLY),
    ((Holding.FOLLOWED,), SOFTLY),
    ((Holding.AUTOMATIC,), SOFTLY),
    ((Holding.ALONE,), SUDDENLY),
    ((Holding.LIMITER,), SUDDENLY),
)
