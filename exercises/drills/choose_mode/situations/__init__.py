"""The situations that questions are made from, and how often each is drawn."""

from collections.abc import Callable

from exercises.drills.choose_mode.scenario import Scenario
from exercises.drills.choose_mode.situations import continuing, inside, wanting
from exercises.drills.scene import Scene

Situation = Callable[[Scene], Scenario]

# The weights spread the right answers over the five choices.
WEIGHTS: dict[Situation, int] = {
    continuing.next_shot_on_new_tape: 3,
    continuing.next_shot_on_used_tape: 3,
    continuing.next_shot_past_the_black: 3,
    continuing.longer_tail: 3,
    continuing.gap_before_the_last_shot: 3,
    continuing.sound_first_on_new_tape: 3,
    continuing.up_to_another_film: 4,
    continuing.next_shot_on_prepared_tape: 4,
    inside.space_on_prepared_tape: 4,
    inside.replace_shot: 4,
    inside.replace_part_of_a_shot: 4,
    inside.cutaway: 6,
    inside.missing_picture: 6,
    inside.card_over_sound: 6,
    inside.new_sound: 6,
    inside.narration_over_shots: 6,
    continuing.sound_first_on_prepared_tape: 6,
    inside.hole_without_pulses: 2,
    inside.make_room: 2,
    continuing.picture_past_the_end: 2,
    continuing.narration_past_the_end: 2,
    wanting.short_take_next: 2,
    wanting.short_take_inside: 2,
    wanting.new_tape_without_leader: 2,
    wanting.short_leader: 2,
    wanting.soon_after_a_new_phase: 2,
    wanting.dissolve: 2,
    wanting.fade_to_black: 2,
}

DRAWN = tuple(situation for situation, weight in WEIGHTS.items() for _ in range(weight))


def name(situation: Situation) -> str:
    return situation.__name__.replace("_", "-")
