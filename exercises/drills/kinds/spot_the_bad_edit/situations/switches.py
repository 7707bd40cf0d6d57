"""Sessions in which a track is recorded that was to stay."""

from exercises.drills.judging.rules import ONE_TRACK, Rule
from exercises.drills.kinds.spot_the_bad_edit.situations.laying import (
    action,
    after,
    before,
    cutaway,
    new_sound,
    short,
    talk,
)
from exercises.drills.kinds.spot_the_bad_edit.situations.masters import either_tape, new_tape
from exercises.drills.kinds.spot_the_bad_edit.work import EditsWork
from exercises.drills.setting.change import Mode
from exercises.drills.setting.quay_street import SOUNDS


def sound_switched_on(work: EditsWork) -> Rule:
    """Both tracks recorded where only the picture was meant."""
    mode = either_tape(work)
    voice = talk(work, mode)
    before(work, mode, 2)
    cutaway(work, voice, short(work), Mode.INSERT_BOTH)
    after(work, mode)
    return ONE_TRACK


def picture_switched_on(work: EditsWork) -> Rule:
    mode = either_tape(work)
    shot = action(work, mode)
    before(work, mode, 2)
    new_sound(work, shot, work.scene.clip(shot.clip.length, SOUNDS), Mode.INSERT_BOTH)
    after(work, mode)
    return ONE_TRACK


def assembled_for_the_picture(work: EditsWork) -> Rule:
    """A new picture over the end of the last shot, made in a mode that takes all tracks."""
    mode = new_tape(work)
    before(work, mode, 2)
    voice = talk(work, mode)
    clip = short(work)
    cutaway(work, voice, clip, Mode.ASSEMBLE, voice.end - clip.length)
    after(work, mode)
    return ONE_TRACK
