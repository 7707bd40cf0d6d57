"""Sessions in which nothing goes wrong, though some of it may look as if it did."""

from exercises.drills.judging.rules import AFTERWARDS, CONTINUE, ONE_TRACK, PREPARED, RUN_UP, Rule
from exercises.drills.kinds.spot_the_bad_edit.situations.laying import (
    action,
    after,
    before,
    cutaway,
    ending,
    film,
    new_sound,
    next_shot,
    replacement,
    short,
    talk,
)
from exercises.drills.kinds.spot_the_bad_edit.situations.masters import (
    either_tape,
    new_tape,
    used_tape,
)
from exercises.drills.kinds.spot_the_bad_edit.work import EditsWork
from exercises.drills.setting.change import Mode
from exercises.drills.setting.quay_street import ACTIONS, SOUNDS


def shot_after_shot(work: EditsWork) -> Rule:
    mode = either_tape(work)
    film(work, mode)
    return AFTERWARDS if mode is Mode.ASSEMBLE else PREPARED


def over_an_old_exercise(work: EditsWork) -> Rule:
    mode = used_tape(work)
    film(work, mode)
    return AFTERWARDS


def picture_over_a_voice(work: EditsWork) -> Rule:
    mode = either_tape(work)
    voice = talk(work, mode)
    before(work, mode, 2)
    cutaway(work, voice, short(work))
    after(work, mode)
    return ONE_TRACK


def sound_under_a_picture(work: EditsWork) -> Rule:
    mode = either_tape(work)
    shot = action(work, mode)
    before(work, mode, 2)
    new_sound(work, shot, work.scene.clip(shot.clip.length, SOUNDS))
    after(work, mode)
    return ONE_TRACK


def shot_for_shot(work: EditsWork) -> Rule:
    mode = either_tape(work)
    talk(work, mode)
    middle = action(work, mode)
    talk(work, mode)
    replacement(work, middle, Mode.INSERT_BOTH)
    return PREPARED


def another_ending(work: EditsWork) -> Rule:
    mode = new_tape(work)
    talk(work, mode)
    action(work, mode)
    ending(work, action(work, mode))
    return CONTINUE


def just_enough_run_up(work: EditsWork) -> Rule:
    scene = work.scene
    mode = either_tape(work)
    before(work, mode, 1)
    run_up = scene.bench.lock + scene.margin + scene.draw.whole(0, scene.rate.nominal)
    next_shot(work, mode, scene.clip(scene.seconds(8, 14), ACTIONS, run_up=run_up))
    after(work, mode)
    return RUN_UP


def picture_to_the_end(work: EditsWork) -> Rule:
    """A new picture over the end of the last shot; its sound stays."""
    mode = new_tape(work)
    before(work, mode, 2)
    voice = talk(work, mode)
    clip = short(work)
    cutaway(work, voice, clip, at=voice.end - clip.length)
    after(work, mode)
    return ONE_TRACK
