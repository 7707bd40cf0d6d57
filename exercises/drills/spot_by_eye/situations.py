"""What may have gone wrong with two shots; each spoils a film, or leaves it well."""

from collections.abc import Callable
from dataclasses import dataclass

from exercises.drills.draw import Draw
from exercises.drills.spot_by_eye.film import Film, Side
from exercises.drills.spot_by_eye.form import Form

FAULTY = 0.89  # of what is drawn; more of it than of what is well makes no question


@dataclass(frozen=True, slots=True)
class Situation:
    name: str
    spoil: Callable[[Film], None]
    forms: tuple[Form, ...] = (Form.STILL, Form.PAIR, Form.MOTION)

    @property
    def is_fault(self) -> bool:
        return self in FAULTS


def mistracked(side: Side, draw: Draw) -> None:
    side.making["player"]["tracking"] = draw.pick((-1, 1)) * draw.whole(53, 78)


def skewed(side: Side, draw: Draw) -> None:
    side.making["player"]["skew"] = draw.pick((-1, 1)) * draw.whole(50, 95)


def copied_often(side: Side, draw: Draw) -> None:
    count = draw.whole(4, 6)
    side.take["generation"] = count
    side.take["chain"] = [10 * draw.whole(34, 38) for _ in range(count)]


def turned_down(film: Film) -> None:
    lower = -film.draw.whole(35, 60)
    for side in (film.first, film.second):
        side.making["picture_level"]["gain"] = lower


def turned_up(film: Film) -> None:
    higher = film.draw.whole(25, 45)
    for side in (film.first, film.second):
        side.making["picture_level"]["gain"] = higher


def dull_tapes(film: Film) -> None:
    white = film.draw.whole(45, 62)
    for side in (film.first, film.second):
        side.take["levels"]["white"] = white + film.draw.whole(-2, 2)


def stepped(film: Film) -> None:
    """Both within what passes, and far apart."""
    whites = [film.draw.whole(82, 85), film.draw.whole(105, 109)]
    for side, white in zip((film.first, film.second), film.draw.shuffled(whites), strict=True):
        side.take["levels"]["white"] = white


def left_over(film: Film) -> None:
    film.assembled = False
    film.left = film.draw.whole(1, 3)


def black_left(film: Film) -> None:
    left_over(film)
    film.leaves_black = True


def pulses_jump(film: Film) -> None:
    film.assembled = False
    film.joints = [film.cut]


def no_run_up(film: Film) -> None:
    film.second.in_ = film.draw.whole(0, film.scene.rate.nominal // 2)


def wiped(film: Film) -> None:
    film.assembled, film.wiping = False, True


def third_generation(film: Film) -> None:
    film.first.take["generation"] = film.second.take["generation"] = 3


def within_limits(film: Film) -> None:
    film.first.making["player"]["tracking"] = film.draw.whole(30, 38)
    film.second.making["player"]["tracking"] = -film.draw.whole(30, 38)


def a_little_low(film: Film) -> None:
    white = film.draw.whole(86, 90)
    for side in (film.first, film.second):
        side.take["levels"]["white"] = white + film.draw.whole(-1, 1)


def well(film: Film) -> None:
    """Nothing is spoilt."""


BOTH_SIDES = (Form.PAIR, Form.MOTION)
MOSTLY_STILL = (Form.STILL, Form.STILL, Form.STILL, *BOTH_SIDES)  # else most faults lay after

FAULTS = (
    Situation("tracking off after the cut", lambda film: mistracked(film.second, film.draw)),
    Situation("tracking off before the cut", lambda film: mistracked(film.first, film.draw)),
    Situation("skew off after the cut", lambda film: skewed(film.second, film.draw)),
    Situation("skew off before the cut", lambda film: skewed(film.first, film.draw)),
    Situation("picture level turned down", turned_down),
    Situation("picture level turned up", turned_up),
    Situation("sources recorded too dark", dull_tapes),
    Situation("levels apart at the cut", stepped, BOTH_SIDES),
    Situation("frames of an older shot left", left_over, (Form.MOTION,)),
    Situation("frames of black left", black_left, (Form.MOTION,)),
    Situation("copied too often after the cut", lambda film: copied_often(film.second, film.draw)),
    Situation("copied too often before the cut", lambda film: copied_often(film.first, film.draw)),
    Situation("black recorded in two goes", pulses_jump, MOSTLY_STILL),
    Situation("take used without run-up", no_run_up, MOSTLY_STILL),
    Situation("next shot wiped by an assemble", wiped, MOSTLY_STILL),
)
WELL = (
    Situation("a clean cut", well),
    Situation("a clean cut of third generation", third_generation),
    Situation("tracking a little off", within_limits),
    Situation("levels a little low", a_little_low),
)


def drawn(draw: Draw) -> Situation:
    return draw.pick(FAULTS if draw.chance(FAULTY) else WELL)
