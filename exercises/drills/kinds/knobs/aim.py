"""How far a setting is off, in the model's own units, and how many marks that leaves."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Self

from exercises.drills.asks import Json


@dataclass(frozen=True, slots=True, kw_only=True)
class Aim:
    """What each position of a control gives: full marks for `aim`, or up to `band` off it.

    >>> Aim(values=(-20, -10, 0, 10, 30), aim=0, band=10).scores()
    (50, 100, 100, 100, 0)
    """

    values: tuple[float, ...]
    aim: float
    band: float

    @property
    def best(self) -> int:
        """The position nearest to the aim."""
        return min(range(len(self.values)), key=self.off)

    def off(self, position: int) -> float:
        return abs(self.values[position] - self.aim)

    def is_right(self, position: int) -> bool:
        return self.off(position) <= self.band

    def score(self, position: int) -> int:
        """Hundredths: all inside the band, and less and less up to three times as far off."""
        if self.is_right(position):
            return 100
        left = 3 * self.band - self.off(position)
        return max(0, min(99, round(50 * left / self.band))) if self.band else 0

    def scores(self) -> tuple[int, ...]:
        return tuple(map(self.score, range(len(self.values))))

    def as_json(self) -> Json:
        return {"values": list(self.values), "aim": self.aim, "band": self.band}

    @classmethod
    def from_json(cls, stored: Mapping[str, Any]) -> Self:
        return cls(values=tuple(stored["values"]), aim=stored["aim"], band=stored["band"])
