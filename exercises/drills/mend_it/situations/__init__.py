"""The spoilt films that questions are about. Each returns the rule that it is about."""

from collections.abc import Callable

from exercises.drills.mend_it.situations import endings, within
from exercises.drills.mend_it.spoiling import Film
from exercises.drills.rules import Rule

Situation = Callable[[Film], Rule]

SITUATIONS: tuple[Situation, ...] = (
    within.assembled_within,
    within.assembled_over_the_hut,
    within.early_insert,
    within.early_picture,
    within.early_sound,
    within.picture_switched_on,
    within.sound_switched_on,
    endings.early_last_shot,
    endings.hole,
    endings.inserted_past_the_end,
    endings.hole_before_the_next,
    endings.next_after_an_insert,
    endings.shot_left_out,
    endings.short_black_between,
)

# An insert mends those that are spoilt within a shot: twice as many, since most others
# take two assembles.
DRAWN = SITUATIONS + tuple(each for each in SITUATIONS if each in within.MENDED_BY_INSERT)


def name(situation: Situation) -> str:
    return situation.__name__.replace("_", "-")
