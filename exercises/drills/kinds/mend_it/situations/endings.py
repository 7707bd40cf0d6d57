"""Films spoilt at their end, or where they go on."""

from exercises.drills.judging.rules import AT_ONCE, MOVES, NO_GAP, NO_PULSES, RUN_UP, Rule
from exercises.drills.kinds.mend_it.situations.told import LIKED, retake, told
from exercises.drills.kinds.mend_it.spoiling import SpoiltFilm
from exercises.drills.setting.quay_street import Shot

BLACK = Shot("black", "silence")


def early_last_shot(film: SpoiltFilm) -> Rule:
    """The last shot assembled from a take that had hardly begun."""
    scene = film.scene
    bad = scene.clip(scene.seconds(7, 11), run_up=scene.too_short(0.3, 3.6))
    scene.assemble(bad, film.cut)
    good = retake(film, bad, longer=scene.seconds(1, 3))
    film.either(bad, good, film.cut)
    told(film, f"The last shot, {bad.shot.picture}, was assembled", bad, film.cut)
    film.happened.append(LIKED)
    film.offer(bad, f"{bad.shot.picture}, the same take")
    film.offer(good, f"{bad.shot.picture}, a longer take")
    film.places += [film.cut, film.cut + bad.length]
    return RUN_UP


def hole(film: SpoiltFilm) -> Rule:
    """The last shot begins a little late."""
    scene = film.scene
    late = film.cut + scene.of_gap(0.4, 1.8)
    scene.assemble(film.last, late)
    film.mean(film.last, 0, film.cut)
    told(film, "The last shot was to follow at once. It was assembled", film.last, late)
    film.places += [film.cut, late]
    _offer_ends(film)
    return NO_GAP


def inserted_past_the_end(film: SpoiltFilm) -> Rule:
    film.scene.insert(film.last, film.cut)
    film.mean(film.last, 0, film.cut)
    told(film, "The last shot was inserted, picture and sound,", film.last, film.cut)
    film.places += [film.cut, film.cut + film.last.length]
    _offer_ends(film)
    return NO_PULSES


def hole_before_the_next(film: SpoiltFilm) -> Rule:
    hole(film)
    return _go_on(film)


def next_after_an_insert(film: SpoiltFilm) -> Rule:
    inserted_past_the_end(film)
    return _go_on(film)


def shot_left_out(film: SpoiltFilm) -> Rule:
    """The last shot follows at once, where another should come before it."""
    scene = film.scene
    left_out = scene.clip(scene.seconds(6, 9))
    scene.assemble(film.last, film.cut)
    film.mean(left_out, 0, film.cut)
    film.mean(film.last, 0, film.cut + left_out.length)
    told(film, "The last shot was assembled", film.last, film.cut)
    film.happened.append(
        f"But {left_out.shot.picture} was forgotten: it belongs between the long shot and the last."
    )
    film.offer(left_out, f"the shot that was forgotten, {left_out.shot.picture}")
    film.places += [film.cut, film.cut + left_out.length]
    _offer_ends(film)
    return MOVES


def short_black_between(film: SpoiltFilm) -> Rule:
    """Black was recorded further on, and a shot inserted too near its start."""
    scene = film.scene
    begins = film.cut + scene.seconds(3.5, 5)
    at = begins + scene.too_short(1.5, 3.8)
    ends = begins + scene.seconds(30, 40)
    scene.record(begins, ends, "black")
    scene.insert(film.last, at)
    film.mean(film.last, 0, at)
    film.happened.append(f"Further on somebody had recorded black, {scene.span(begins, ends)}.")
    told(film, "A second part was to begin there. Its first shot was inserted", film.last, at)
    film.happened.append("What comes between the long shot and this one need not play.")
    black = scene.clip(at - film.cut, (BLACK,))
    film.offer(black, f"{scene.lasting(black.length)} of black")
    film.places += [film.cut, begins, at]
    _offer_ends(film)
    return RUN_UP


def _offer_ends(film: SpoiltFilm) -> None:
    skip = film.talk.length - film.scene.seconds(2, 3)
    film.offer(film.talk, "the end of the long shot", skip=skip)
    film.offer(film.last, film.last.shot.picture)


def _go_on(film: SpoiltFilm) -> Rule:
    """Another shot is still to come."""
    following = film.scene.clip(film.scene.seconds(6, 9))
    at = film.cut + film.last.length
    film.mean(following, 0, at)
    film.happened.append(f"After it {following.shot.picture} is still to be laid.")
    film.onward = film.offer(following, f"the next shot, {following.shot.picture}")
    film.places.append(at)
    return AT_ONCE
