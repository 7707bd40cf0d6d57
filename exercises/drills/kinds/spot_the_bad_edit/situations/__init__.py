"""The situations that sessions are made from. Each returns the rule that it is about."""

from collections.abc import Callable

from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.spot_the_bad_edit.situations import copies, pulses, switches, well, worn
from exercises.drills.kinds.spot_the_bad_edit.work import EditsWork
from exercises.drills.setting.draw import Draw

Situation = Callable[[EditsWork], Rule]

# By what is wrong in the end, and of how many in a thousand it is: so that no fault, no edit and no
# mend is right much more often than another. What is wrong, only the tape model says.
GROUPS: tuple[tuple[int, tuple[Situation, ...]], ...] = (
    (
        82,
        (
            pulses.insert_at_the_end,
            pulses.sound_past_the_end,
            pulses.insert_past_the_black,
            pulses.assemble_in_the_middle,
            pulses.late_assemble,
        ),
    ),
    (71, (pulses.first_shot_after_the_joint, pulses.across_the_joint)),
    (20, (copies.insert_after_the_joint,)),
    (72, (copies.first_frames_next, copies.across_two_takes)),
    (80, (copies.first_frames_cutaway, copies.first_frames_sound)),
    (76, (copies.take_that_ends,)),
    (84, (copies.picture_that_ends, copies.sound_that_ends)),
    (74, (switches.picture_switched_on,)),
    (80, (switches.sound_switched_on, switches.assembled_for_the_picture)),
    (113, (worn.worn_edit_master,)),
    (62, (worn.worn_source_tape,)),
    (92, (worn.player_that_is_off,)),
    (
        96,
        (
            well.shot_after_shot,
            well.over_an_old_exercise,
            well.picture_over_a_voice,
            well.sound_under_a_picture,
            well.shot_for_shot,
            well.another_ending,
            well.just_enough_run_up,
            well.picture_to_the_end,
        ),
    ),
)
*_, PLAYED_OFF, WELL = (situations for _, situations in GROUPS)
FAULTY = tuple(each for _, situations in GROUPS[:-2] for each in situations)


def drawn(draw: Draw) -> Situation:
    left = draw.below(sum(share for share, _ in GROUPS))
    for share, situations in GROUPS:
        if left < share:
            return draw.pick(situations)
        left -= share
    raise AssertionError("the shares add up to more than their sum")
