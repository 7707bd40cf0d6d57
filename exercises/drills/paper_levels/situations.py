"""What is recorded, and what the meter shows of it."""

from collections.abc import Callable

from exercises.drills.paper_levels.case import IRE, VU, Case, Mode
from exercises.drills.phrases import begun
from exercises.drills.quay_street import ACTIONS, CARDS, SOUNDS, TALKS, TAPES
from exercises.drills.rules import LIMITER, LINE_UP, SPEECH_BY_HAND, WHITE_LEVEL
from exercises.drills.scene import Scene

Situation = Callable[[Scene], Case]


def vu(scene: Scene) -> int:
    """A reading on the scale, neither right already nor at its end."""
    reading: int = scene.draw.pick((*range(-14, -1), 2))
    return reading


def white(scene: Scene) -> int:
    reading: int = scene.draw.pick((*range(58, 96), *range(105, 111)))
    return reading


def speech(scene: Scene, story: str, *, soft: bool = True) -> Case:
    return Case(
        scale=VU,
        reading=vu(scene),
        story=story,
        heard="the loudest words",
        rule=SPEECH_BY_HAND,
        mode=Mode.HAND,
        soft=soft,
    )


def sudden(scene: Scene, story: str) -> Case:
    return Case(
        scale=VU,
        reading=vu(scene),
        story=story,
        heard="the ordinary sound, at its loudest",
        rule=LIMITER,
        mode=Mode.LIMITER,
    )


def picture(scene: Scene, story: str) -> Case:
    return Case(
        scale=IRE,
        reading=white(scene),
        story=story,
        heard="the brightest white",
        rule=WHITE_LEVEL,
    )


def talk_with_pauses(scene: Scene) -> Case:
    sound = scene.draw.pick(TALKS).sound
    return speech(
        scene,
        f"{begun(sound)}, from {scene.draw.pick(TAPES)}: some sentences are softer than others, "
        "and between them there are long pauses with the room’s own sound in them.",
    )


def talk_that_drops(scene: Scene) -> Case:
    sound = scene.draw.pick(TALKS).sound
    return speech(
        scene,
        f"{begun(sound)}. Towards the end of every sentence the voice drops, and then there is "
        "silence while the gulls go on outside.",
    )


def whisper_in_the_hut(scene: Scene) -> Case:
    return speech(
        scene,
        f"In the hut at night, {scene.draw.pick(TALKS).sound}: half a whisper now and then, and "
        "a stove that is heard whenever nobody speaks.",
    )


def narration(scene: Scene) -> Case:
    return speech(
        scene,
        f"Narration for {scene.draw.pick(ACTIONS).picture}, read at one pace in a quiet room "
        "where a fan can just be heard between the sentences.",
        soft=False,
    )


def two_voices(scene: Scene) -> Case:
    first, second = (shot.sound for shot in scene.draw.shuffled(TALKS)[:2])
    return speech(
        scene,
        f"Two voices in turn: {first}, then {second}. The second is softer, and each waits for "
        "the other to end.",
    )


def bell_without_warning(scene: Scene) -> Case:
    return sudden(
        scene,
        f"At the barrier, under {scene.draw.pick(ACTIONS).picture}: water, voices, and at any "
        "moment the bell, far louder. It can be recorded only once.",
    )


def horn_in_the_fog(scene: Scene) -> Case:
    return sudden(
        scene,
        "The harbour in fog, steady and quiet. Sometime within the next quarter of an hour the "
        f"ferry’s horn will sound beside the microphone, under {scene.draw.pick(ACTIONS).picture}.",
    )


def laughter(scene: Scene) -> Case:
    return sudden(
        scene,
        f"{begun(scene.draw.pick(TALKS).sound)}, told at an even level and without pauses; but "
        "the listeners burst out laughing, nobody knows when.",
    )


def bolt_and_chain(scene: Scene) -> Case:
    return sudden(
        scene,
        f"For {scene.draw.pick(ACTIONS).picture}: the crank room, even and soft, until the bolt "
        "falls with a crash that nobody can time.",
    )


def tone_from_another_bench(scene: Scene) -> Case:
    return Case(
        scale=VU,
        reading=vu(scene),
        story=f"{scene.draw.pick(TAPES)} begins with line-up tone, recorded at 0 VU. It is to "
        f"set this recorder for {scene.draw.pick(SOUNDS).sound}, which follows.",
        heard="the tone",
        rule=LINE_UP,
    )


def tone_for_the_leader(scene: Scene) -> Case:
    return Case(
        scale=VU,
        reading=vu(scene),
        story="Line-up tone goes at the head of the edit master, so that every machine after "
        f"this one can be set by it. The film will begin with {scene.draw.pick(ACTIONS).picture}.",
        heard="the tone",
        rule=LINE_UP,
    )


def bright_outside(scene: Scene) -> Case:
    return picture(
        scene,
        f"{begun(scene.draw.pick(ACTIONS).picture)}, from {scene.draw.pick(TAPES)}: sunlight on "
        "the water is the brightest thing in it.",
    )


def white_card(scene: Scene) -> Case:
    return picture(
        scene,
        f"{begun(scene.draw.pick(CARDS).picture)}, from {scene.draw.pick(TAPES)}: its paper is "
        "to be white on the edit master.",
    )


def window_in_the_hut(scene: Scene) -> Case:
    return picture(
        scene,
        f"{begun(scene.draw.pick(TALKS).picture)}, from {scene.draw.pick(TAPES)}: a white wall "
        "behind is the brightest thing in the shot.",
    )


WEIGHTS: dict[Situation, int] = {
    talk_with_pauses: 2,
    talk_that_drops: 2,
    whisper_in_the_hut: 2,
    narration: 2,
    two_voices: 2,
    bell_without_warning: 2,
    horn_in_the_fog: 2,
    laughter: 2,
    bolt_and_chain: 2,
    tone_from_another_bench: 1,
    tone_for_the_leader: 1,
    bright_outside: 2,
    white_card: 1,
    window_in_the_hut: 2,
}

DRAWN = tuple(situation for situation, weight in WEIGHTS.items() for _ in range(weight))


def name(situation: Situation) -> str:
    return situation.__name__.replace("_", "-")
