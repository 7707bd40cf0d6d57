"""The recordings that somebody would choose: the best by what they believe."""

from collections.abc import Collection, Sequence
from functools import cache, cached_property

from exercises.drills.asks import Json
from exercises.drills.beliefs import as_played, telling_apart
from exercises.drills.beliefs.telling_apart import Believed
from exercises.drills.kinds.mend_it.repair import Repair
from exercises.drills.setting.change import BY_WORK
from exercises.drills.setting.draw import Draw
from exercises.tape.judging import Demand, first_miss
from exercises.tape.planning.offered import Offered, fewest, lays_nothing_else

MOST = 3  # recordings
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
    choosing = MendChooser(repair)

    @cache
    def answer(beliefs: frozenset[str]) -> Json | None:
        rows = choosing.best(beliefs)
        return None if rows is None else {"recordings": [list(row) for row in rows]}

    asked = (*ALWAYS, *draw.shuffled(BY_TURNS))
    found = telling_apart.as_many_as_can_be(asked, answer)
    if found is None:
        return None
    told = [given for _, given in found]
    alone = {belief: answer(frozenset((belief,))) for belief in asked}
    return found, {held: given for held, given in alone.items() if given and given not in told}


class MendChooser:
    """What somebody would choose from the recordings on offer."""

    def __init__(self, repair: Repair) -> None:
        self.repair = repair
        self._fewest = cache(self._chosen)
        self._fitting = cache(self._that_fit)

    def best(self, beliefs: Collection[str]) -> Rows | None:
        """As few recordings as mend the film, the least work first; None where three don't.

        Who believes that mending can wait makes those that mend it last.
        """
        rows = self._fewest(frozenset(beliefs) - {LATER})
        return self._put_off(rows) if rows and LATER in beliefs else rows

    def _chosen(self, beliefs: frozenset[str]) -> Rows | None:
        offers = [self._offered(number, beliefs) for number in range(len(self.repair.films))]
        return fewest(self.repair.spoilt, offers, MOST)

    def _offered(self, number: int, beliefs: frozenset[str]) -> Offered[Row]:
        """Recordings for one film, as somebody with these beliefs expects them to turn out."""
        film, bench = self.repair.films[number], self.repair.session.bench
        return Offered(
            self._fitting(number),
            lambda tape, row: self.repair.after(tape, row, beliefs),
            lambda tape: first_miss(film, as_played(tape, bench, beliefs), bench),
        )

    @cached_property
    def _by_work(self) -> list[tuple[int, Row]]:
        return [
            (at, (mode.value, str(shot), str(place)))
            for mode in BY_WORK
            for shot in range(len(self.repair.offers))
            for place, at in enumerate(self.repair.places)
        ]

    def _that_fit(self, number: int) -> list[tuple[int, Row]]:
        """Recordings that one film can be mended with, whatever somebody believes."""
        film = self.repair.films[number]
        return [(at, row) for at, row in self._by_work if self._fits(row, film)]

    def _fits(self, row: Row, film: Sequence[Demand]) -> bool:
        """Whether it lies on the tape, and lays nothing where something else is wanted."""
        edit = self.repair.trial(self.repair.spoilt, row).edit
        return edit.end <= self.repair.spoilt.length and lays_nothing_else(edit, film)

    def _put_off(self, rows: Rows) -> Rows:
        return tuple(sorted(rows, key=lambda row: int(row[1]) != self.repair.onward))
