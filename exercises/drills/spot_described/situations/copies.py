"""Sessions in which something is copied badly: no run-up, or no one take."""

from exercises.drills.quay_street import SOUNDS
from exercises.drills.rules import ONE_TAKE, RUN_UP, Rule
from exercises.drills.spot_described.situations.laying import (
    action,
    cutaway,
    new_sound,
    next_shot,
    perhaps,
    talk,
)
from exercises.drills.spot_described.situations.masters import either_tape, jointed_tape
from exercises.drills.spot_described.work import Work


def first_frames_next(work: Work) -> Rule:
    """A shot too near the start of its take, in the run of the film."""
    mode = either_tape(work)
    talk(work, mode)
    perhaps(work, mode)
    clip = work.scene.clip(work.scene.seconds(8, 14), run_up=work.scene.of_run_up(0, 3.5))
    next_shot(work, mode, clip)
    perhaps(work, mode)
    return RUN_UP


def first_frames_cutaway(work: Work) -> Rule:
    mode = either_tape(work)
    voice = talk(work, mode)
    perhaps(work, mode)
    clip = work.scene.clip(work.scene.seconds(6, 10), run_up=work.scene.of_run_up(0, 3.5))
    cutaway(work, voice, clip)
    perhaps(work, mode)
    return RUN_UP


def first_frames_sound(work: Work) -> Rule:
    mode = either_tape(work)
    perhaps(work, mode)
    shot = action(work, mode)
    clip = work.scene.clip(shot.clip.length, SOUNDS, run_up=work.scene.of_run_up(0, 3.5))
    new_sound(work, shot, clip)
    perhaps(work, mode)
    return RUN_UP


def across_two_takes(work: Work) -> Rule:
    mode = either_tape(work)
    perhaps(work, mode)
    frames = work.scene.seconds(8, 14)
    next_shot(work, mode, work.scene.clip(frames, joint=frames // 2 - work.scene.seconds(0, 2)))
    action(work, mode)
    return ONE_TAKE


def take_that_ends(work: Work) -> Rule:
    """The take ends before the edit does."""
    mode = either_tape(work)
    perhaps(work, mode)
    frames = work.scene.seconds(8, 14)
    next_shot(work, mode, work.scene.clip(frames, stops=frames - work.scene.seconds(0.5, 3)))
    action(work, mode)
    return ONE_TAKE


def insert_after_the_joint(work: Work) -> Rule:
    joint = work.scene.seconds(10, 20)
    mode = jointed_tape(work, joint)
    work.start = joint + work.scene.past_a_joint()
    talk(work, mode)
    action(work, mode)
    return RUN_UP
