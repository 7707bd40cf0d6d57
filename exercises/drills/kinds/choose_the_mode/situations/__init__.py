"""The situations that questions are made from, and how often each is drawn."""

from collections.abc import Callable

from exercises.drills.kinds.choose_the_mode.scenario import Scenario
from exercises.drills.kinds.choose_the_mode.situations import (
    endings,
    going_on,
    mixes,
    neighbours,
    pictures,
    run_ups,
    shots,
    sounds,
)
from exercises.drills.setting.scene import Scene

Situation = Callable[[Scene], Scenario]

# The weights spread the right answers over the five choices.
WEIGHTS: dict[Situation, int] = {
    going_on.next_shot_on_new_tape: 3,
    going_on.next_shot_on_used_tape: 3,
    going_on.next_shot_past_the_black: 3,
    endings.longer_tail: 3,
    endings.gap_before_the_last_shot: 3,
    sounds.sound_first_on_new_tape: 3,
    neighbours.up_to_another_film: 4,
    going_on.next_shot_on_prepared_tape: 4,
    shots.space_on_prepared_tape: 4,
    shots.replace_shot: 4,
    shots.replace_part_of_a_shot: 4,
    pictures.cutaway: 6,
    pictures.missing_picture: 6,
    pictures.card_over_sound: 6,
    sounds.new_sound: 6,
    sounds.narration_over_shots: 6,
    sounds.sound_first_on_prepared_tape: 6,
    neighbours.hole_without_pulses: 2,
    neighbours.make_room: 2,
    endings.picture_past_the_end: 2,
    endings.narration_past_the_end: 2,
    run_ups.short_take_next: 2,
    run_ups.short_take_inside: 2,
    run_ups.new_tape_without_leader: 2,
    run_ups.short_leader: 2,
    run_ups.soon_after_a_new_phase: 2,
    mixes.dissolve: 2,
    mixes.fade_to_black: 2,
}

DRAWN = tuple(situation for situation, weight in WEIGHTS.items() for _ in range(weight))
