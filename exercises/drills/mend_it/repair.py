"""A spoilt edit master, what it should hold, what there is to mend it with, and how it went."""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass

from exercises.drills.asks import Json
from exercises.drills.beliefs import BELIEFS, Attempt, recorded
from exercises.drills.change import Change, Mode
from exercises.drills.wants import Miss, Want, misses
from exercises.tape import Session, Tape, read_session

Rows = Sequence[Sequence[str]]  # mode, shot, place: as they are chosen


@dataclass(frozen=True, slots=True)
class Offer:
    """`[in_, out)` of a source tape that can be recorded, told in words."""

    tape: str
    in_: int
    out: int
    told: str


class Repair:
    """`offers` and `places` are chosen by their index, as text."""

    def __init__(
        self,
        session: Session,
        wants: Sequence[Want],
        offers: Sequence[Offer],
        places: Sequence[int],
    ) -> None:
        self.session = session
        self.spoilt = session.recorded()
        self.wants = tuple(wants)
        self.offers = tuple(offers)
        self.places = tuple(places)

    @classmethod
    def from_json(cls, key: Json) -> "Repair":
        return cls(
            read_session(key["session"]),
            [Want(**want) for want in key["film"]],
            [Offer(**offer) for offer in key["offers"]],
            key["places"],
        )

    def as_json(self) -> Json:
        return {
            "film": [want.as_json() for want in self.wants],
            "offers": [
                {name: getattr(offer, name) for name in ("tape", "in_", "out", "told")}
                for offer in self.offers
            ],
            "places": list(self.places),
        }

    def mended(self, rows: Rows, beliefs: Collection[str] = ()) -> Tape:
        """The edit master after these recordings, or as a believer expects it."""
        tape = self.spoilt
        for mode, shot, place in rows:
            offer, way = self.offers[int(shot)], Mode(mode)
            change = Change(
                source=self.session.sources[offer.tape],
                in_=offer.in_,
                out=offer.out,
                at=self.places[int(place)],
                tracks=way.tracks,
            )
            tape = recorded(Attempt(tape, change, way, self.session.bench), beliefs)
        return tape

    def left(self, tape: Tape) -> list[Miss]:
        """What is still not as it should be."""
        return list(misses(self.wants, tape, self.session.bench))

    def explained(self, rows: Rows) -> tuple[str, ...]:
        """The first belief by which these recordings would be enough; none for others."""
        return next(((belief,) for belief in self._explaining(rows)), ())

    def _explaining(self, rows: Rows) -> Iterator[str]:
        modes = {Mode(row[0]) for row in rows}
        for belief in BELIEFS.values():
            if modes & set(belief.modes) and not self.left(self.mended(rows, (belief.id,))):
                yield belief.id
