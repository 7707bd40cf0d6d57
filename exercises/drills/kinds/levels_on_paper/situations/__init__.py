"""What is recorded, and what the meter shows of it. Each situation makes a case of a scene."""

from collections.abc import Callable

from exercises.drills.kinds.levels_on_paper.case import LevelsCase
from exercises.drills.kinds.levels_on_paper.situations import held, laid, pictures, sounds
from exercises.drills.setting.scene import Scene

Situation = Callable[[Scene], LevelsCase]

WEIGHTS: dict[Situation, int] = {
    held.sound: 10,
    sounds.second_take: 3,
    sounds.ambience: 3,
    sounds.tone: 2,
    pictures.white: 4,
    pictures.bars: 4,
    pictures.black: 2,
    laid.shot: 6,
}

DRAWN = tuple(situation for situation, weight in WEIGHTS.items() for _ in range(weight))
