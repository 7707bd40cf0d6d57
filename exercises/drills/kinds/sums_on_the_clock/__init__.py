"""Sums on the clock: lengths, places and amounts, with every believer's result."""

from collections.abc import Iterator

from exercises.drills.asks import Moment
from exercises.drills.beliefs.telling_apart import told_apart
from exercises.drills.kind import Question
from exercises.drills.kinds.sums.situations import SITUATIONS, Situation, name
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

IN_PICTURES = (
    "Where labels are left out, add up pictures: 1,800 in a minute that keeps all its labels, "
    "1,798 in one that leaves out two, 17,982 in ten minutes."
)


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """What the seed draws, one after the other; None where it makes no sum, or a blind one."""
    draw = Draw(seed)
    while True:
        yield question(draw.pick(SITUATIONS), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    total = situation(scene)
    kept = told_apart(total.beliefs(), total.answer) if total else None
    if total is None or kept is None:
        return None
    drops = scene.bench.drop_frame
    return Question(
        situation=name(situation),
        skill=total.rule.skill,
        asks=tuple(part.ask for part in total.parts),
        shown={
            "story": f"{opening(scene)} {total.story}",
            "facts": [
                *map(list, total.facts),
                ["Rate", rate(scene)],
            ],
        },
        right=total.answer(),
        rule=total.rule.at(scene.bench),
        believed=kept,
        key={
            "labels": scene.rate.nominal,
            "working": {
                part.ask.name: part.told(in_pictures=drops and isinstance(part.ask, Moment))
                for part in total.parts
            },
            "note": f"{total.note} {IN_PICTURES}".strip() if drops else total.note,
        },
    )


def rate(scene: Scene) -> str:
    told = f"{scene.rate.label} frames a second: the labels run to {scene.rate.nominal - 1}"
    if not scene.bench.drop_frame:
        return told
    return (
        f"{told}; a label with a semicolon is drop-frame, one with colons alone is not; "
        f"lengths count {scene.rate.nominal} frames to a second"
    )
