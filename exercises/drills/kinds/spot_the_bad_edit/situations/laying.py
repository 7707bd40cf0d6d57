"""The edits that situations are put together from, each with its purpose in words."""

from exercises.drills.kinds.spot_the_bad_edit.work import EditsWork
from exercises.drills.setting.change import Mode
from exercises.drills.setting.job import Job
from exercises.drills.setting.quay_street import ACTIONS, TALKS, Shot
from exercises.drills.setting.scene import Clip

LEAST, MOST = 3, 5  # edits of a session


def next_shot(work: EditsWork, mode: Mode, clip: Clip) -> Job:
    """The film goes on, where it ends so far."""
    picture = clip.shot.picture
    purpose = work.scene.draw.pick(
        (f"the next shot: {picture}.", f"the film goes on with {picture}.", f"next, {picture}.")
    )
    if not work.jobs:
        purpose = f"the first shot: {picture}."
    return work.lay(clip, work.end, mode, purpose)


def talk(work: EditsWork, mode: Mode) -> Job:
    return next_shot(work, mode, work.scene.clip(work.scene.seconds(18, 50), TALKS))


def action(work: EditsWork, mode: Mode) -> Job:
    return next_shot(work, mode, short(work))


def before(work: EditsWork, mode: Mode, own: int) -> None:
    """Shots before what matters, and a number of those after it, so that it may be any edit.

    `own` counts the edits of the situation itself.
    """
    draw = work.scene.draw
    beside = draw.whole(LEAST, MOST) - own
    count = draw.whole(0, beside)
    if count == beside and draw.chance(0.4):  # else the last edit was to blame most often
        count = draw.whole(0, beside)
    work.after = beside - count
    for _ in range(count):
        any_shot(work, mode)


def after(work: EditsWork, mode: Mode) -> None:
    for _ in range(work.after):
        any_shot(work, mode)


def any_shot(work: EditsWork, mode: Mode) -> Job:
    return (talk if work.scene.draw.chance(0.3) else action)(work, mode)


def film(work: EditsWork, mode: Mode) -> None:
    """Shot after shot."""
    before(work, mode, 0)
    after(work, mode)


def short(work: EditsWork, shots: tuple[Shot, ...] = ACTIONS) -> Clip:
    return work.scene.clip(work.scene.seconds(6, 12), shots)


def inside(work: EditsWork, job: Job, frames: int) -> int:
    """Somewhere well inside a job: where so many frames may begin."""
    second = work.scene.rate.nominal
    return work.scene.draw.whole(job.at + second, job.end - frames - second)


def cutaway(
    work: EditsWork, job: Job, clip: Clip, mode: Mode = Mode.INSERT_PICTURE, at: int | None = None
) -> Job:
    """A new picture over part of a job, its sound meant to stay."""
    picture, voice = clip.shot.picture, job.clip.shot.sound
    purpose = work.scene.draw.pick(
        (
            f"new picture, {picture}. The sound there was to stay: {voice}.",
            f"{picture}, to be seen while we go on hearing {voice}.",
        )
    )
    at = inside(work, job, clip.length) if at is None else at
    return work.lay(clip, at, mode, purpose, ("picture",))


def new_sound(
    work: EditsWork, job: Job, clip: Clip, mode: Mode = Mode.INSERT_SOUND, at: int | None = None
) -> Job:
    """A new sound under a job, its picture meant to stay."""
    picture, sound = job.clip.shot.picture, clip.shot.sound
    purpose = work.scene.draw.pick(
        (
            f"another sound, {sound}. The picture there was to stay: {picture}.",
            f"{sound}, to be heard while we go on seeing {picture}.",
        )
    )
    return work.lay(clip, job.at if at is None else at, mode, purpose, ("sound",))


def replacement(work: EditsWork, job: Job, mode: Mode) -> Job:
    """Another shot in the place of a job, exactly as long."""
    clip = work.scene.clip(job.clip.length)
    old, new = job.clip.shot.picture, clip.shot.picture
    purpose = work.scene.draw.pick(
        (
            f"{new}, in the place of {old}. What follows was to stay.",
            f"instead of {old}, {new}, exactly as long.",
        )
    )
    return work.lay(clip, job.at, mode, purpose)


def ending(work: EditsWork, job: Job) -> Job:
    """Another ending instead of the last job, and a longer one."""
    clip = work.scene.clip(job.clip.length + work.scene.seconds(1, 6))
    old, new = job.clip.shot.picture, clip.shot.picture
    purpose = work.scene.draw.pick(
        (
            f"a new ending, {new}. The old one, {old}, could go.",
            f"{new}, to end the film instead of {old}.",
        )
    )
    return work.lay(clip, job.at, Mode.ASSEMBLE, purpose)
