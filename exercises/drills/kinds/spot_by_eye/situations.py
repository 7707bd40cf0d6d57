"""What may have gone wrong with two shots; each spoils a film, or leaves it well."""

from collections.abc import Callable
from dataclasses import dataclass
from itertools import chain

from exercises.drills.kinds.spot_by_eye.faults import Where
from exercises.drills.kinds.spot_by_eye.film import CutFilm, ShotAtCut
from exercises.drills.kinds.spot_by_eye.form import Form
from exercises.drills.setting.draw import Draw


@dataclass(frozen=True, slots=True)
class Situation:
    """`place` says where a fault is to be seen; None where there is none."""

    name: str
    spoil: Callable[[CutFilm], None]
    place: Where | None = None

    @property
    def is_fault(self) -> bool:
        return self.place is not None


def mistracked(side: ShotAtCut, draw: Draw) -> None:
    side.machines["player"]["tracking"] = draw.pick((-1, 1)) * draw.whole(53, 78)


def skewed(side: ShotAtCut, draw: Draw) -> None:
    side.machines["player"]["skew"] = draw.pick((-1, 1)) * draw.whole(50, 95)


def copied_often(side: ShotAtCut, draw: Draw) -> None:
    count = draw.whole(4, 6)
    side.take["generation"] = count
    side.take["chain"] = [10 * draw.whole(34, 38) for _ in range(count)]


def turned_down(film: CutFilm) -> None:
    lower = -film.draw.whole(35, 60)
    for side in (film.first, film.second):
        side.machines["picture_level"]["gain"] = lower


def turned_up(film: CutFilm) -> None:
    higher = film.draw.whole(25, 45)
    for side in (film.first, film.second):
        side.machines["picture_level"]["gain"] = higher


def dull_tapes(film: CutFilm) -> None:
    white = film.draw.whole(45, 62)
    for side in (film.first, film.second):
        side.take["levels"]["white"] = white + film.draw.whole(-2, 2)


def stepped(film: CutFilm) -> None:
    """Both within what passes, and far apart."""
    whites = [film.draw.whole(82, 85), film.draw.whole(105, 109)]
    for side, white in zip((film.first, film.second), film.draw.shuffled(whites), strict=True):
        side.take["levels"]["white"] = white


def left_over(film: CutFilm) -> None:
    film.assembled = False
    film.left = film.draw.whole(1, 3)


def black_left(film: CutFilm) -> None:
    left_over(film)
    film.leaves_black = True


def pulses_jump(film: CutFilm) -> None:
    film.assembled = False
    film.joints = [film.cut]


def no_run_up(film: CutFilm) -> None:
    film.second.in_ = film.draw.whole(0, film.scene.rate.nominal // 2)


def wiped(film: CutFilm) -> None:
    film.assembled, film.wiping = False, True


def third_generation(film: CutFilm) -> None:
    film.first.take["generation"] = film.second.take["generation"] = 3


def within_limits(film: CutFilm) -> None:
    film.first.machines["player"]["tracking"] = film.draw.whole(30, 38)
    film.second.machines["player"]["tracking"] = -film.draw.whole(30, 38)


def a_little_low(film: CutFilm) -> None:
    white = film.draw.whole(86, 90)
    for side in (film.first, film.second):
        side.take["levels"]["white"] = white + film.draw.whole(-1, 1)


def well(film: CutFilm) -> None:
    """Nothing is spoilt."""


def take_ends(film: CutFilm) -> None:
    """Shortly before the first shot does."""
    film.assembled = False
    film.first.stops = film.first.out - film.draw.whole(16, 24)


def worn_out(side: ShotAtCut, draw: Draw) -> None:
    side.dropouts = float(draw.whole(6, 12))


def by_side(
    name: str, spoil: Callable[[ShotAtCut, Draw], None], *, shares: tuple[int, int, int] = (6, 3, 2)
) -> tuple[Situation, ...]:
    """A fault of either side or of both, in these shares."""

    def both(film: CutFilm) -> None:
        for side in (film.first, film.second):
            spoil(side, film.draw)

    before, after, on_both = shares
    return (
        *before * (Situation(f"{name} before the cut", lambda f: spoil(f.first, f.draw), BEFORE),),
        *after * (Situation(f"{name} after the cut", lambda f: spoil(f.second, f.draw), AFTER),),
        *on_both * (Situation(f"{name} on both sides", both, BOTH),),
    )


BEFORE, AFTER, BOTH, CUT = Where
JUMP = (Situation("levels apart at the cut", stepped, CUT),)
FLASH = (
    Situation("frames of an older shot left", left_over, CUT),
    Situation("frames of black left", black_left, CUT),
)
ON_A_SIDE = (
    by_side("tracking off", mistracked),
    by_side("skew off", skewed),
    by_side("copied too often", copied_often),
    by_side("a worn tape", worn_out),
    (
        Situation("picture level turned down", turned_down, BOTH),
        Situation("sources recorded too dark", dull_tapes, BOTH),
    ),
    (Situation("picture level turned up", turned_up, BOTH),),
    (
        Situation("black recorded in two goes", pulses_jump, AFTER),
        Situation("take used without run-up", no_run_up, AFTER),
    ),
    (
        Situation("next shot wiped by an assemble", wiped, AFTER),
        Situation("take ends before the cut", take_ends, BEFORE),
    ),
)
WELL = (
    Situation("a clean cut", well),
    Situation("a clean cut of third generation", third_generation),
    Situation("tracking a little off", within_limits),
    Situation("levels a little low", a_little_low),
)
FAULTS = tuple(dict.fromkeys(chain(JUMP, FLASH, *ON_A_SIDE)))

# Of how many in a hundred each is; what is left is shared alike by the faults of a side. So no
# fault and no place is right much more often than another.
SHARES: dict[Form, tuple[tuple[int, tuple[Situation, ...]], ...]] = {
    Form.STILL: ((12, WELL),),
    Form.PAIR: ((12, WELL), (13, JUMP)),
    Form.MOTION: ((12, WELL), (13, JUMP), (13, FLASH)),
}


def drawn(draw: Draw, form: Form, place: Where | None) -> Situation:
    """One that can be seen in such a form; in a still, on its side of the cut."""
    left = draw.below(100)
    for share, situations in SHARES[form]:
        if left < share:
            return draw.pick(situations)
        left -= share
    there = [[each for each in faults if is_seen(each, place)] for faults in ON_A_SIDE]
    return draw.pick(draw.pick([faults for faults in there if faults]))


def is_seen(situation: Situation, place: Where | None) -> bool:
    """Whether a picture of one side of the cut shows it; of both, where no side is given."""
    return place is None or situation.place in (place, BOTH)
