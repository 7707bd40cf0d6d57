"""Sessions in which something is done that ruins a stretch. What, only the model says."""

from exercises.drills.change import Mode
from exercises.drills.quay_street import SOUNDS, TALKS
from exercises.drills.rules import (
    CONTINUE,
    ENDS,
    NO_GAP,
    NO_PULSES,
    ONE_PHASE,
    ONE_TAKE,
    ONE_TRACK,
    RUN_UP,
)
from exercises.drills.scene import Clip
from exercises.drills.spot_described.situations.laying import (
    action,
    cutaway,
    either_tape,
    jointed_tape,
    new_sound,
    new_tape,
    next_shot,
    replacement,
    short,
    talk,
    used_tape,
)
from exercises.drills.spot_described.work import Work


def insert_at_the_end(work: Work) -> str:
    mode = work.scene.draw.pick((new_tape, used_tape))(work)
    talk(work, mode)
    action(work, mode)
    next_shot(work, Mode.INSERT_BOTH, short(work))
    return NO_PULSES


def sound_past_the_end(work: Work) -> str:
    mode = new_tape(work)
    talk(work, mode)
    last = action(work, mode)
    at = last.end - work.scene.seconds(3, 5)
    clip = work.scene.clip(work.scene.seconds(8, 14), SOUNDS)
    purpose = work.scene.draw.pick(
        (
            f"{clip.shot.sound}, to be heard from the end of the last shot on.",
            f"the sound first, for the shots to come: {clip.shot.sound}.",
        )
    )
    work.lay(clip, at, Mode.INSERT_SOUND, purpose)
    return NO_PULSES


def insert_past_the_black(work: Work) -> str:
    scene = work.scene
    work.start = scene.seconds(10, 25)
    speech, walk = scene.clip(scene.seconds(18, 50), TALKS), short(work)
    clip = scene.clip(scene.seconds(8, 14))
    black = work.start + speech.length + walk.length + clip.length // 2 - scene.seconds(0, 2)
    scene.record(0, black, "black")
    work.story = scene.draw.pick(
        (
            f"The master had been prepared with black as far as {scene.code(black)}. "
            "The rest of the tape was new.",
            f"Black had been recorded as far as {scene.code(black)}, and nothing beyond.",
        )
    )
    for shot in (speech, walk, clip):
        next_shot(work, Mode.INSERT_BOTH, shot)
    return CONTINUE


def assemble_in_the_middle(work: Work) -> str:
    mode = either_tape(work)
    talk(work, mode)
    middle = action(work, mode)
    talk(work, mode)
    replacement(work, middle, Mode.ASSEMBLE)
    return ENDS


def late_assemble(work: Work) -> str:
    """The second or third shot begins a little after the end of the one before."""
    mode = new_tape(work)
    talk(work, mode)
    if work.scene.draw.chance(0.5):
        action(work, mode)
    clip = work.scene.clip(work.scene.seconds(10, 16))
    work.lay(clip, work.end + work.scene.draw.whole(4, 45), mode, late(work, clip))
    if work.scene.draw.chance(0.5):
        action(work, mode)
    return NO_GAP


def late(work: Work, clip: Clip) -> str:
    picture = clip.shot.picture
    return work.scene.draw.pick((f"the next shot: {picture}.", f"next, {picture}."))


def first_frames_next(work: Work) -> str:
    """A shot too near the start of its take, in the run of the film."""
    mode = either_tape(work)
    talk(work, mode)
    clip = work.scene.clip(work.scene.seconds(8, 14), run_up=work.scene.seconds(0, 3.5))
    next_shot(work, mode, clip)
    action(work, mode)
    return RUN_UP


def first_frames_cutaway(work: Work) -> str:
    mode = either_tape(work)
    voice = talk(work, mode)
    action(work, mode)
    clip = work.scene.clip(work.scene.seconds(6, 10), run_up=work.scene.seconds(0, 3.5))
    cutaway(work, voice, clip)
    return RUN_UP


def first_frames_sound(work: Work) -> str:
    mode = either_tape(work)
    talk(work, mode)
    shot = action(work, mode)
    clip = work.scene.clip(shot.clip.length, SOUNDS, run_up=work.scene.seconds(0, 3.5))
    new_sound(work, shot, clip)
    return RUN_UP


def sound_switched_on(work: Work) -> str:
    """Both tracks recorded where only the picture was meant."""
    mode = either_tape(work)
    voice = talk(work, mode)
    action(work, mode)
    cutaway(work, voice, short(work), Mode.INSERT_BOTH)
    return ONE_TRACK


def picture_switched_on(work: Work) -> str:
    mode = either_tape(work)
    talk(work, mode)
    shot = action(work, mode)
    new_sound(work, shot, work.scene.clip(shot.clip.length, SOUNDS), Mode.INSERT_BOTH)
    talk(work, mode)
    return ONE_TRACK


def assembled_for_the_picture(work: Work) -> str:
    """A new picture over the end of the last shot, made in a mode that takes all tracks."""
    mode = new_tape(work)
    action(work, mode)
    voice = talk(work, mode)
    clip = short(work)
    cutaway(work, voice, clip, Mode.ASSEMBLE, voice.end - clip.length)
    return ONE_TRACK


def across_two_takes(work: Work) -> str:
    mode = either_tape(work)
    talk(work, mode)
    frames = work.scene.seconds(8, 14)
    next_shot(work, mode, work.scene.clip(frames, joint=frames // 2 - work.scene.seconds(0, 2)))
    action(work, mode)
    return ONE_TAKE


def take_that_ends(work: Work) -> str:
    """The take ends before the edit does."""
    mode = either_tape(work)
    talk(work, mode)
    frames = work.scene.seconds(8, 14)
    next_shot(work, mode, work.scene.clip(frames, stops=frames - work.scene.seconds(0.5, 3)))
    action(work, mode)
    return ONE_TAKE


def first_shot_after_the_joint(work: Work) -> str:
    joint = work.scene.seconds(10, 20)
    jointed_tape(work, joint)
    work.start = joint + work.scene.seconds(1.2, 3.5)
    talk(work, Mode.ASSEMBLE)
    action(work, Mode.ASSEMBLE)
    return RUN_UP


def insert_after_the_joint(work: Work) -> str:
    joint = work.scene.seconds(10, 20)
    mode = jointed_tape(work, joint)
    work.start = joint + work.scene.seconds(1.2, 3.5)
    talk(work, mode)
    action(work, mode)
    return RUN_UP


def across_the_joint(work: Work) -> str:
    scene = work.scene
    work.start = scene.seconds(10, 20)
    shots = (scene.clip(scene.seconds(12, 20), TALKS), scene.clip(scene.seconds(8, 12)))
    second = shots[1].length
    joint = work.start + shots[0].length + scene.draw.whole(second // 4, second // 2)
    mode = jointed_tape(work, joint)
    for shot in shots:
        next_shot(work, mode, shot)
    action(work, mode)
    return ONE_PHASE


FAULTY = (
    insert_at_the_end,
    sound_past_the_end,
    insert_past_the_black,
    assemble_in_the_middle,
    late_assemble,
    first_frames_next,
    first_frames_cutaway,
    first_frames_sound,
    sound_switched_on,
    picture_switched_on,
    assembled_for_the_picture,
    across_two_takes,
    take_that_ends,
    first_shot_after_the_joint,
    insert_after_the_joint,
    across_the_joint,
)
