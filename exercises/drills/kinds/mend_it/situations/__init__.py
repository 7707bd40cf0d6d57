"""The spoilt films that questions are about. Each returns the rule that it is about."""

from collections.abc import Callable

from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.mend_it.situations import endings, within
from exercises.drills.kinds.mend_it.spoiling import SpoiltFilm

Situation = Callable[[SpoiltFilm], Rule]

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

# How often each is drawn for one that an assemble mends: so that every mode is the first of the
# right recordings about as often.
INSERTS: dict[Situation, int] = {
    within.early_insert: 7,
    within.early_picture: 4,
    within.early_sound: 4,
    within.picture_switched_on: 4,
    within.sound_switched_on: 4,
}
DRAWN = tuple(each for each in SITUATIONS for _ in range(INSERTS.get(each, 1)))
