"""Sessions in which part of the film is left without pulses, or they jump."""

from exercises.drills.judging.rules import (
    CONTINUE,
    ENDS,
    NO_GAP,
    NO_PULSES,
    ONE_PHASE,
    RUN_UP,
    Rule,
)
from exercises.drills.kinds.spot_the_bad_edit.situations.laying import (
    action,
    after,
    any_shot,
    before,
    film,
    next_shot,
    replacement,
    short,
    talk,
)
from exercises.drills.kinds.spot_the_bad_edit.situations.masters import (
    either_tape,
    jointed_tape,
    new_tape,
    used_tape,
)
from exercises.drills.kinds.spot_the_bad_edit.work import EditsWork
from exercises.drills.setting.change import Mode
from exercises.drills.setting.quay_street import SOUNDS, TALKS
from exercises.drills.setting.scene import Clip


def insert_at_the_end(work: EditsWork) -> Rule:
    used = used_tape if work.scene.bench.erase_gap else new_tape  # where nothing is wiped, it rolls
    mode = work.scene.draw.pick((new_tape, used))(work)
    film(work, mode)
    next_shot(work, Mode.INSERT_BOTH, short(work))
    return NO_PULSES


def sound_past_the_end(work: EditsWork) -> Rule:
    mode = new_tape(work)
    talk(work, mode)
    any_shot(work, mode)
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


def insert_past_the_black(work: EditsWork) -> Rule:
    scene = work.scene
    work.start = scene.seconds(10, 25)
    speech, walk = scene.clip(scene.seconds(18, 50), TALKS), short(work)
    clip = scene.clip(scene.seconds(8, 14))
    black = work.start + speech.length + walk.length + clip.length // 2 - scene.seconds(0, 2)
    scene.record(0, black, "black")
    work.story = scene.draw.pick(
        (
            f"The edit master had been prepared with black as far as {scene.code(black)}. "
            "The rest of the tape was new.",
            f"Black had been recorded as far as {scene.code(black)}, and nothing beyond.",
        )
    )
    for shot in (speech, walk, clip):
        next_shot(work, Mode.INSERT_BOTH, shot)
    return CONTINUE


def assemble_in_the_middle(work: EditsWork) -> Rule:
    mode = either_tape(work)
    talk(work, mode)
    middle = action(work, mode)
    talk(work, mode)
    replacement(work, middle, Mode.ASSEMBLE)
    return ENDS


def late_assemble(work: EditsWork) -> Rule:
    """A shot begins a little after the end of the one before."""
    mode = new_tape(work)
    any_shot(work, mode)
    before(work, mode, 2)
    clip = work.scene.clip(work.scene.seconds(10, 16))
    work.lay(clip, work.end + work.scene.draw.whole(4, 45), mode, late(work, clip))
    after(work, mode)
    return NO_GAP


def late(work: EditsWork, clip: Clip) -> str:
    picture = clip.shot.picture
    return work.scene.draw.pick((f"the next shot: {picture}.", f"next, {picture}."))


def first_shot_after_the_joint(work: EditsWork) -> Rule:
    joint = work.scene.seconds(10, 20)
    jointed_tape(work, joint)
    work.start = joint + work.scene.past_a_joint()
    film(work, Mode.ASSEMBLE)
    return RUN_UP


def across_the_joint(work: EditsWork) -> Rule:
    scene = work.scene
    work.start = scene.seconds(10, 20)
    shots = (scene.clip(scene.seconds(12, 20), TALKS), scene.clip(scene.seconds(10, 14)))
    joint = work.start + shots[0].length + scene.seconds(2, 4)
    mode = jointed_tape(work, joint)
    for shot in shots:
        next_shot(work, mode, shot)
    for _ in range(scene.draw.whole(1, 3)):
        any_shot(work, mode)
    return ONE_PHASE
