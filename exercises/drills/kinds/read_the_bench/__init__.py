"""Read the bench: a few things to be seen there, and four replies or three."""

from collections.abc import Iterator

from exercises.drills.asks import Choice, Option
from exercises.drills.kind import Question
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
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

LETTERS = "abcd"
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


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """Whatever the seed draws is a question."""
    draw = Draw(seed)
    while True:
        situation, scene = draw.pick(DRAWN), Scene(draw, settings)
        yield question(situation(scene), scene)


def question(reading: BenchReading, scene: Scene) -> Question:
    letters = dict(zip(scene.draw.shuffled(list(reading.replies)), LETTERS, strict=False))
    options = [Option(value=letter, text=text) for text, letter in letters.items()]
    return Question(
        situation=reading.name,
        skill=reading.rule.skill,
        asks=(Choice(name="reply", legend=reading.legend, options=tuple(options)),),
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
