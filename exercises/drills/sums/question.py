"""Sums on the clock: lengths, places and amounts, with every believer's result."""

from collections.abc import Iterator
from dataclasses import asdict

from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.scene import Scene, opening
from exercises.drills.settings import Settings
from exercises.drills.sums.situations import SITUATIONS, Situation, name
from exercises.drills.telling_apart import told_apart


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """What the seed draws, one after the other; None where it makes no sum, or a blind one."""
    draw = Draw(seed)
    while True:
        yield question(draw.pick(SITUATIONS), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    total = situation(scene)
    kept = total and told_apart(total.beliefs(), total.answer)
    if total is None or kept is None:
        return None
    return Question(
        situation=name(situation),
        skill=total.rule.skill,
        asks=tuple(part.ask for part in total.parts),
        shown={
            "story": f"{opening(scene)} {total.story}",
            "facts": [
                *map(list, total.facts),
                [
                    "Rate",
                    f"{scene.rate.label} frames a second: the labels run to "
                    f"{scene.rate.nominal - 1}",
                ],
            ],
        },
        right=total.answer(),
        reveals={},
        key={
            "believed": kept,
            "labels": scene.rate.nominal,
            "working": {part.ask.name: part.told() for part in total.parts},
            "note": total.note,
            "rule": asdict(total.rule),
        },
    )
