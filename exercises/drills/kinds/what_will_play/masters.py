"""Edit masters as they are found before a visit, and their stories."""

from dataclasses import dataclass

from exercises.drills.kinds.what_will_play.visit import Visit
from exercises.drills.setting.change import Mode
from exercises.drills.setting.quay_street import ACTIONS, TALKS
from exercises.drills.setting.scene import Clip


@dataclass(frozen=True, slots=True)
class LaidFilm:
    """`[start, end)` of the film so far; a long shot, somebody talking, begins at `middle`."""

    start: int
    middle: int
    end: int


def action(visit: Visit, *, run_up: int | None = None) -> Clip:
    return visit.scene.clip(visit.scene.seconds(7, 11), ACTIONS, run_up=run_up)


def assembled(visit: Visit) -> LaidFilm:
    """A leader, then three shots; nothing beyond them."""
    start = leader(visit, visit.scene.seconds(10, 25))
    film = _film(visit, start, Mode.ASSEMBLE)
    span = visit.scene.span(film.start, film.end)
    visit.story = visit.scene.draw.pick(
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


def laid_in_black(visit: Visit) -> LaidFilm:
    """The whole tape recorded with black, three shots inserted over it."""
    visit.scene.record(0, visit.scene.length, "black")
    film = _film(visit, visit.scene.seconds(10, 25), Mode.INSERT_BOTH)
    span = visit.scene.span(film.start, film.end)
    visit.story = visit.scene.draw.pick(
        (
            "The tape was recorded with black from its start to its end in one go. "
            f"Three shots lie over that, {span}.",
            f"On a tape prepared with black all along, the film so far runs {span}: three shots.",
        )
    )
    return film


def _film(visit: Visit, start: int, mode: Mode) -> LaidFilm:
    scene = visit.scene
    middle = visit.found(action(visit), start, mode)
    talk = scene.clip(scene.seconds(26, 34), TALKS)
    last = visit.found(talk, middle, mode)
    return LaidFilm(start, middle, visit.found(action(visit), last, mode))


def leader(visit: Visit, frames: int) -> int:
    """Black from the start of a new tape on, and nothing else; where it ends."""
    scene = visit.scene
    scene.record(0, frames, "black")
    visit.story = (
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


def stray(visit: Visit, at: int) -> int:
    """A shot that somebody inserted where there are no pulses; where it ends."""
    scene, clip = visit.scene, action(visit)
    end = visit.found(clip, at, Mode.INSERT_BOTH)
    visit.places += [at, end]
    visit.story += " " + scene.draw.pick(
        (
            f"Further along, {scene.span(at, end)}, somebody has inserted {clip.shot.picture}, "
            "as the map shows.",
            f"Last week {clip.shot.picture} was inserted on the new tape, {scene.span(at, end)}.",
        )
    )
    return end
