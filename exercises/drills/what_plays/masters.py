"""Edit masters as they are found before a sitting, and their stories."""

from dataclasses import dataclass

from exercises.drills.change import Mode
from exercises.drills.quay_street import ACTIONS, TALKS
from exercises.drills.scene import Clip
from exercises.drills.what_plays.sitting import Sitting


@dataclass(frozen=True, slots=True)
class Film:
    """`[start, end)` of the film so far; a long shot, somebody talking, begins at `middle`."""

    start: int
    middle: int
    end: int


def action(sitting: Sitting, *, run_up: int | None = None) -> Clip:
    return sitting.scene.clip(sitting.scene.seconds(7, 11), ACTIONS, run_up=run_up)


def assembled(sitting: Sitting) -> Film:
    """A leader, then three shots; nothing beyond them."""
    start = leader(sitting, sitting.scene.seconds(10, 25))
    film = _film(sitting, start, Mode.ASSEMBLE)
    span = sitting.scene.span(film.start, film.end)
    sitting.story = sitting.scene.draw.pick(
        (
            f"After a leader of black the film runs {span}, three shots so far. "
            "Beyond it the tape is new.",
            f"So far there are a leader of black and three shots, {span}. "
            "The rest of the tape has never been recorded on.",
            f"Three shots are laid, {span}, each assembled to the one before; "
            "after them comes tape fresh from the box.",
        )
    )
    return film


def laid_in_black(sitting: Sitting) -> Film:
    """The whole tape recorded with black, three shots inserted over it."""
    sitting.scene.record(0, sitting.scene.length, "black")
    film = _film(sitting, sitting.scene.seconds(10, 25), Mode.INSERT_BOTH)
    span = sitting.scene.span(film.start, film.end)
    sitting.story = sitting.scene.draw.pick(
        (
            "The tape was recorded with black from its start to its end in one go. "
            f"Three shots lie over that, {span}.",
            f"On a tape prepared with black all along, the film so far runs {span}: three shots.",
        )
    )
    return film


def _film(sitting: Sitting, start: int, mode: Mode) -> Film:
    scene = sitting.scene
    middle = sitting.found(action(sitting), start, mode)
    talk = scene.clip(scene.seconds(26, 34), TALKS)
    last = sitting.found(talk, middle, mode)
    return Film(start, middle, sitting.found(action(sitting), last, mode))


def leader(sitting: Sitting, frames: int) -> int:
    """Black from the start of a new tape on, and nothing else; where it ends."""
    scene = sitting.scene
    scene.record(0, frames, "black")
    sitting.story = (
        "The tape has been recorded with black from its start to its end, in one go."
        if frames == scene.length
        else scene.draw.pick(
            (
                f"The tape is new, but for {scene.lasting(frames)} of black at its start.",
                f"On a new tape there are {scene.lasting(frames)} of black, and nothing else yet.",
            )
        )
    )
    return frames


def stray(sitting: Sitting, at: int) -> int:
    """A shot that somebody inserted where there are no pulses; where it ends."""
    scene, clip = sitting.scene, action(sitting)
    end = sitting.found(clip, at, Mode.INSERT_BOTH)
    sitting.places += [at, end]
    sitting.story += " " + scene.draw.pick(
        (
            f"Further along, {scene.span(at, end)}, somebody has inserted {clip.shot.picture}, "
            "as the map shows.",
            f"Last week {clip.shot.picture} was inserted on the new tape, {scene.span(at, end)}.",
        )
    )
    return end
