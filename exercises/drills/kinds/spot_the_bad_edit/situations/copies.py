"""Sessions in which something is copied badly: no run-up, or no one take."""

from exercises.drills.judging.rules import ONE_TAKE, RUN_UP, Rule
from exercises.drills.kinds.spot_the_bad_edit.situations.laying import (
    action,
    after,
    before,
    cutaway,
    film,
    new_sound,
    next_shot,
    talk,
)
from exercises.drills.kinds.spot_the_bad_edit.situations.masters import either_tape, jointed_tape
from exercises.drills.kinds.spot_the_bad_edit.work import EditsWork
from exercises.drills.setting.quay_street import SOUNDS


def first_frames_next(work: EditsWork) -> Rule:
    """A shot too near the start of its take, in the run of the film."""
    mode = either_tape(work)
    before(work, mode, 1)
    clip = work.scene.clip(work.scene.seconds(8, 14), run_up=work.scene.of_run_up(0, 3.5))
    next_shot(work, mode, clip)
    after(work, mode)
    return RUN_UP


def first_frames_cutaway(work: EditsWork) -> Rule:
    mode = either_tape(work)
    voice = talk(work, mode)
    before(work, mode, 2)
    clip = work.scene.clip(work.scene.seconds(6, 10), run_up=work.scene.of_run_up(0, 3.5))
    cutaway(work, voice, clip)
    after(work, mode)
    return RUN_UP


def first_frames_sound(work: EditsWork) -> Rule:
    mode = either_tape(work)
    shot = action(work, mode)
    before(work, mode, 2)
    clip = work.scene.clip(shot.clip.length, SOUNDS, run_up=work.scene.of_run_up(0, 3.5))
    new_sound(work, shot, clip)
    after(work, mode)
    return RUN_UP


def across_two_takes(work: EditsWork) -> Rule:
    mode = either_tape(work)
    before(work, mode, 1)
    frames = work.scene.seconds(8, 14)
    next_shot(work, mode, work.scene.clip(frames, joint=frames // 2 - work.scene.seconds(0, 2)))
    after(work, mode)
    return ONE_TAKE


def take_that_ends(work: EditsWork) -> Rule:
    """The take ends before the edit does."""
    mode = either_tape(work)
    before(work, mode, 1)
    frames = work.scene.seconds(8, 14)
    next_shot(work, mode, work.scene.clip(frames, stops=frames - work.scene.seconds(0.5, 3)))
    after(work, mode)
    return ONE_TAKE


def picture_that_ends(work: EditsWork) -> Rule:
    """The take of a cutaway does."""
    mode = either_tape(work)
    voice = talk(work, mode)
    before(work, mode, 2)
    frames = work.scene.seconds(6, 10)
    cutaway(work, voice, work.scene.clip(frames, stops=frames - work.scene.seconds(0.5, 3)))
    after(work, mode)
    return ONE_TAKE


def sound_that_ends(work: EditsWork) -> Rule:
    mode = either_tape(work)
    shot = action(work, mode)
    before(work, mode, 2)
    frames = shot.clip.length
    stops = frames - work.scene.seconds(0.5, 3)
    new_sound(work, shot, work.scene.clip(frames, SOUNDS, stops=stops))
    after(work, mode)
    return ONE_TAKE


def insert_after_the_joint(work: EditsWork) -> Rule:
    joint = work.scene.seconds(10, 20)
    mode = jointed_tape(work, joint)
    work.start = joint + work.scene.past_a_joint()
    film(work, mode)
    return RUN_UP
