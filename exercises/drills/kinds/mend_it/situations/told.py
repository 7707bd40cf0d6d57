"""What happened to a film, in words."""

from exercises.drills.kinds.mend_it.spoiling import SpoiltFilm
from exercises.drills.setting.scene import Clip

LIKED = "Everybody likes this take; another will do if this one can’t be had without a fault."


def told(film: SpoiltFilm, what: str, clip: Clip, at: int) -> None:
    scene = film.scene
    film.happened.append(f"The shot: {clip.shot.picture}, with {clip.shot.sound}.")
    film.happened.append(
        f"{what} {scene.span(at, at + clip.length)}, from {clip.tape}, "
        f"{scene.span(clip.in_, clip.out)}; the take there runs {scene.span(*clip.takes[0])}."
    )


def retake(film: SpoiltFilm, bad: Clip, *, longer: int = 0) -> Clip:
    """The same shot from a take with enough run-up."""
    good = film.scene.clip(bad.length + longer)
    return Clip(good.tape, good.in_, good.out, good.takes, bad.shot)
