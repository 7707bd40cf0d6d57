"""The recordings that somebody would choose: the best by what they believe."""

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from functools import cache, cached_property

from exercises.drills.asks import Json
from exercises.drills.beliefs import as_played, telling_apart
from exercises.drills.kind import Believed
from exercises.drills.kinds.mend_it.repair import Repair
from exercises.drills.setting.change import Mode
from exercises.drills.setting.draw import Draw
from exercises.tape import Tape
from exercises.tape.judging import Demand, first_miss

MOST = 3  # recordings
BY_WORK = (Mode.INSERT_PICTURE, Mode.INSERT_SOUND, Mode.INSERT_BOTH, Mode.ASSEMBLE)
LATER = "mend-later"
ALWAYS = ("no-master-run-up", "no-source-run-up", LATER)
# One of these often hides another: whoever holds both chooses as if they held one.
BY_TURNS = ("insert-lays-pulses", "assemble-ends-clean", "insert-pushes-along")

Row = tuple[str, str, str]
Rows = tuple[Row, ...]


def believed(repair: Repair, draw: Draw) -> tuple[Believed, Json] | None:
    """What is chosen under each subset of some beliefs that can be told apart.

    With it, by belief, what else somebody would choose who holds it alone. None where no
    belief makes a difference.
    """
    planner = Planner(repair)

    @cache
    def answer(beliefs: frozenset[str]) -> Json | None:
        rows = planner.best(beliefs)
        return None if rows is None else {"recordings": [list(row) for row in rows]}

    asked = (*ALWAYS, *draw.shuffled(BY_TURNS))
    found = telling_apart.as_many_as_can_be(asked, answer)
    if found is None:
        return None
    told = [given for _, given in found]
    alone = {belief: answer(frozenset((belief,))) for belief in asked}
    return found, {held: given for held, given in alone.items() if given and given not in told}


class Planner:
    def __init__(self, repair: Repair) -> None:
        self.repair = repair
        self._films = [tuple(film) for film in repair.films]
        self._mends = cache(self._mend)

    def best(self, beliefs: Collection[str]) -> Rows | None:
        """As few recordings as mend the film, the least work first; None where three don't.

        Who believes that mending can wait makes those that mend it last.
        """
        rows = self._mends(frozenset(beliefs) - {LATER})
        return self._put_off(rows) if rows and LATER in beliefs else rows

    def _mend(self, beliefs: frozenset[str]) -> Rows | None:
        searches = [Search(self.repair, film, beliefs) for film in self._films]
        found = (search.first(count) for count in range(1, MOST + 1) for search in searches)
        return next((rows for rows in found if rows), None)

    def _put_off(self, rows: Rows) -> Rows:
        return tuple(sorted(rows, key=lambda row: int(row[1]) != self.repair.onward))


@dataclass(frozen=True)
class Search:
    """Ways to get one film, as somebody with these beliefs expects."""

    repair: Repair
    film: tuple[Demand, ...]
    beliefs: frozenset[str]

    def first(self, count: int) -> Rows | None:
        return next(self.ways(self.repair.spoilt, count, -1), None)

    def ways(self, tape: Tape, count: int, after: int) -> Iterator[Rows]:
        """Every way with so many recordings, each further along than the one before.

        No recording mends what lies before it: each begins where the first thing is wrong,
        or earlier.
        """
        wrong = self.wrong(tape)
        if count == 0 or wrong is None:
            yield from [()] if count == 0 and wrong is None else []
            return
        for place, row in self.rows:
            if after < place <= wrong:
                then = self.repair.after(tape, row, self.beliefs)
                for rest in self.ways(then, count - 1, place):
                    yield (row, *rest)

    def wrong(self, tape: Tape) -> int | None:
        """The first frame that is not as it should be."""
        bench = self.repair.session.bench
        return first_miss(self.film, as_played(tape, bench, self.beliefs), bench)

    @cached_property
    def rows(self) -> list[tuple[int, Row]]:
        """The recordings that lay nothing where something else is wanted, by work."""
        places = list(enumerate(self.repair.places))
        return [
            (at, (mode.value, str(shot), str(place)))
            for mode in BY_WORK
            for shot in range(len(self.repair.offers))
            for place, at in places
            if self._fits(mode, shot, at)
        ]

    def _fits(self, mode: Mode, shot: int, at: int) -> bool:
        offer, tracks = self.repair.offers[shot], mode.tracks
        end = at + offer.out - offer.in_
        return end <= self.repair.spoilt.length and all(
            (want.source, want.shift) == (offer.tape, at - offer.in_)
            for want in self.film
            if want.at < end and want.end > at and want.track in tracks
        )
