"""A spoilt edit master, what it should hold, what there is to mend it with, and how it went."""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass

from exercises.drills.asks import Json
from exercises.drills.beliefs import BELIEFS, Trial, as_played, recorded
from exercises.drills.setting.change import Change, Mode
from exercises.tape import EditSession, Tape, read_edit_session
from exercises.tape.judging import Demand, Miss, met, misses

Rows = Sequence[Sequence[str]]  # mode, shot, place: as they are chosen


@dataclass(frozen=True, slots=True)
class OfferedShot:
    """`[in_, out)` of a source tape that can be recorded, told in words."""

    tape: str
    in_: int
    out: int
    told: str


class Repair:
    """What is wanted is any of `films`, the first of them best.

    `offers` and `places` are chosen by their index, as text. `onward` is the offer that is
    not laid yet and follows what is spoilt.
    """

    def __init__(
        self,
        session: EditSession,
        films: Sequence[Sequence[Demand]],
        offers: Sequence[OfferedShot],
        places: Sequence[int],
        *,
        onward: int | None = None,
    ) -> None:
        self.session = session
        self.spoilt = session.recorded()
        self.films = tuple(map(tuple, films))
        self.offers = tuple(offers)
        self.places = tuple(places)
        self.onward = onward

    @classmethod
    def from_json(cls, key: Json) -> "Repair":
        return cls(
            read_edit_session(key["session"]),
            [[Demand.from_json(want) for want in film] for film in key["films"]],
            [OfferedShot(**offer) for offer in key["offers"]],
            key["places"],
            onward=key["onward"],
        )

    def as_json(self) -> Json:
        return {
            "films": [[want.as_json() for want in film] for film in self.films],
            "offers": [
                {name: getattr(offer, name) for name in ("tape", "in_", "out", "told")}
                for offer in self.offers
            ],
            "places": list(self.places),
            "onward": self.onward,
        }

    def mended(self, rows: Rows, beliefs: Collection[str] = ()) -> Tape:
        """The edit master after these recordings, or as a believer expects it."""
        tape = self.spoilt
        for row in rows:
            tape = self.after(tape, row, beliefs)
        return tape

    def after(self, tape: Tape, row: Sequence[str], beliefs: Collection[str]) -> Tape:
        """A tape after one more recording."""
        return recorded(self.trial(tape, row), beliefs)

    def trial(self, tape: Tape, row: Sequence[str]) -> Trial:
        """A recording on a tape, as it was chosen."""
        mode, shot, place = row
        offer, way = self.offers[int(shot)], Mode(mode)
        change = Change(
            source=self.session.sources[offer.tape],
            in_=offer.in_,
            out=offer.out,
            at=self.places[int(place)],
            tracks=way.tracks,
        )
        return Trial(tape, change, way, self.session.bench)

    def left(self, tape: Tape) -> list[Miss]:
        """What is still not as it should be, by the film that it comes nearest to."""
        found = [list(misses(film, tape, self.session.bench)) for film in self.films]
        return min(found, key=lambda left: sum(miss.end - miss.start for miss in left))

    def enough(self, rows: Rows, belief: str) -> bool:
        """Whether somebody with a belief expects these recordings to mend the film."""
        tape = as_played(self.mended(rows, (belief,)), self.session.bench, (belief,))
        return any(met(film, tape, self.session.bench) for film in self.films)

    def explained(self, rows: Rows) -> tuple[str, ...]:
        """The first belief by which these recordings would be enough; none for others.

        Somebody who sees nothing to mend is not explained by what they record.
        """
        return next(((belief,) for belief in self._explaining(rows)), ())

    def _explaining(self, rows: Rows) -> Iterator[str]:
        modes = {Mode(row[0]) for row in rows}
        for belief in BELIEFS.values():
            if not modes & set(belief.modes) or not self.enough(rows, belief.id):
                continue  # first what is seldom so: each `enough` plays a tape
            if not self.enough((), belief.id):
                yield belief.id
