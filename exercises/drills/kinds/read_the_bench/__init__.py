"""Read the bench: what lamps, meters, switches and leads tell, and what to do then."""

from exercises.drills.judging import reply
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.read_the_bench import (
    channels,
    codes,
    erasing,
    lamps,
    loops,
    meters,
    monitors,
)
from exercises.drills.kinds.read_the_bench.reading import BenchReading
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

DRAWN = (
    loops.loop_of_boxes,
    lamps.lit,
    monitors.shown,
    channels.inserted,
    channels.listened,
    meters.read,
    erasing.edited,
    codes.laid,
    codes.zeroed,
)


def candidate(draw: Draw, settings: Settings) -> Question:
    situation, scene = draw.pick(DRAWN), Scene(draw, settings)
    return question(situation(scene), scene)


def question(reading: BenchReading, scene: Scene) -> Question:
    letters = reply.lettered(scene.draw.shuffled(list(reading.replies)))
    texts = {letter: text for text, letter in letters.items()}
    return Question(
        situation=reading.name,
        skill=reading.rule.skill,
        asks=(reply.ask(reading.legend, texts),),
        shown={
            "story": f"{opening(scene)} {reading.story}",
            "facts": [list(pair) for pair in reading.facts],
        },
        right={"reply": letters[reading.right]},
        rule=reading.rule.at(scene.bench),
        key={
            "whys": {letters[text]: why for text, why in reading.replies.items()},
        },
    )


KIND = Kind(
    slug=slug_of(__name__),
    title="Read the bench",
    purpose="Lamps, meters, switches, heads and leads: what do they tell you, and what now?",
    skills=(
        "recorder-set-up",
        "picture-level",
        "sound-level",
        "replacing-inside-it",
        "planning-and-time-code",
    ),
    lesson="the-machines",
    revision=4,
    template="drills/kinds/read_the_bench.html",
    candidate=candidate,
    grade=reply.grade,
)
