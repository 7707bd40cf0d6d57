"""The situations that sessions are made from. Each returns the rule that it is about."""

from collections.abc import Callable

from exercises.drills.draw import Draw
from exercises.drills.rules import Rule
from exercises.drills.spot_described.situations import copies, pulses, switches, well
from exercises.drills.spot_described.work import Work

Situation = Callable[[Work], Rule]

# What is done in them ruins a stretch of the film. What, only the tape model says.
FAULTY: tuple[Situation, ...] = (
    pulses.insert_at_the_end,
    pulses.sound_past_the_end,
    pulses.insert_past_the_black,
    pulses.assemble_in_the_middle,
    pulses.late_assemble,
    pulses.first_shot_after_the_joint,
    pulses.across_the_joint,
    copies.first_frames_next,
    copies.first_frames_cutaway,
    copies.first_frames_sound,
    copies.across_two_takes,
    copies.take_that_ends,
    copies.insert_after_the_joint,
    switches.sound_switched_on,
    switches.picture_switched_on,
    switches.assembled_for_the_picture,
)

# Nothing goes wrong in these, though some of it may look as if it did.
WELL: tuple[Situation, ...] = (
    well.shot_after_shot,
    well.over_an_old_exercise,
    well.picture_over_a_voice,
    well.sound_under_a_picture,
    well.shot_for_shot,
    well.another_ending,
    well.just_enough_run_up,
    well.picture_to_the_end,
)


def drawn(draw: Draw) -> Situation:
    """One in six goes well, as one in six has any other fault: guessing gains nothing."""
    return draw.pick(WELL if draw.chance(1 / 6) else FAULTY)


def name(situation: Situation) -> str:
    return situation.__name__.replace("_", "-")
