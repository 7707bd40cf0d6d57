"""Sound levels that are set on a meter: a second take, ambience, tone."""

from exercises.drills.judging.rules import BELOW_SPEECH, EACH_TAKE, LINE_UP
from exercises.drills.kinds.levels_on_paper.case import HOT, LevelsCase, Turn
from exercises.drills.kinds.levels_on_paper.scale import AMBIENCE, VU
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.quay_street import ACTIONS, SOUNDS, TALKS, TAPES
from exercises.drills.setting.scene import Scene

ONE = "one-level-for-all"
ROOMS = (
    "the harbour at noon",
    "wind on the water",
    "the empty crank room",
    "rain on the hut’s window",
    "water against the piles",
    "the fish market, far off",
)


def second_take(scene: Scene) -> LevelsCase:
    reading = scene.draw.pick((*range(-13, -3), *range(4, 9)))
    first, second = scene.draw.shuffled(TAPES)[:2]
    talk = scene.draw.pick(TALKS)
    told = VU.told(reading) if reading <= VU.end else f"about {VU.told(reading)}, past the end"
    return LevelsCase(
        name="second-take",
        story=f"{begun(talk.sound)}, in two takes. The one from {first} is laid, and reached "
        f"0 VU. The other, from {second}, follows as an edit of its own.",
        facts=(("Meter", VU.name), ("Second take, same knob", f"the loudest words: {told}")),
        rule=EACH_TAKE,
        turn=Turn(scale=VU, reading=reading, lures={ONE: reading}),
    )


def ambience(scene: Scene) -> LevelsCase:
    reading = scene.draw.pick((*range(-19, -13), *range(-6, -2), 1, 2))
    room = scene.draw.pick(ROOMS)
    return LevelsCase(
        name="ambience",
        story=scene.draw.pick(
            (
                f"Under {scene.draw.pick(ACTIONS).picture} goes {room}, from "
                f"{scene.draw.pick(TAPES)}. The shots on either side have speech.",
                f"Between two answers of the keeper, {room} is to be heard by itself for a while, "
                f"from {scene.draw.pick(TAPES)}.",
            )
        ),
        facts=(
            ("Meter", AMBIENCE.name),
            ("As the knob stands", f"{room}, at its loudest: {AMBIENCE.told(reading)}"),
        ),
        rule=BELOW_SPEECH,
        turn=Turn(
            scale=AMBIENCE,
            reading=reading,
            lures={HOT: AMBIENCE.end},
            slips={0: "That would put it at 0 VU, where speech belongs."},
        ),
    )


def tone(scene: Scene) -> LevelsCase:
    reading = scene.draw.pick((*range(-14, -1), 2))
    story = scene.draw.pick(
        (
            f"{scene.draw.pick(TAPES)} begins with line-up tone, recorded at 0 VU. It is to set "
            f"this recorder for {scene.draw.pick(SOUNDS).sound}, which follows.",
            "Line-up tone goes at the head of the edit master, so that every machine after this "
            f"one can be set by it. The film will begin with {scene.draw.pick(ACTIONS).picture}.",
        )
    )
    return LevelsCase(
        name="tone",
        story=story,
        facts=(("Meter", VU.name), ("As the knob stands", f"the tone: {VU.told(reading)}")),
        rule=LINE_UP,
        turn=Turn(scale=VU, reading=reading, lures={HOT: VU.end}),
    )
