"""A level to be set on paper: what the meter shows, what is right, what a believer does."""

from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass, field

from exercises.drills.asks import Amount, Json
from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.levels_on_paper.scale import PaperMeter

HOT = "hotter-is-better"


@dataclass(frozen=True, slots=True, kw_only=True)
class Turn:
    """How far a level is turned from a reading to its mark; `lures` are marks of believers.

    `slips` are other marks that somebody may aim at, with what there is to say of it.
    """

    scale: PaperMeter
    reading: float
    lures: Mapping[str, float] = field(default_factory=dict)
    slips: Mapping[float, str] = field(default_factory=dict)
    knob: str = "the level"

    def by(self, beliefs: Collection[str] = ()) -> float:
        """How far up; below 0 it is turned down."""
        held = (mark for belief, mark in self.lures.items() if belief in beliefs)
        return self.to(next(held, self.scale.mark))

    def to(self, mark: float) -> float:
        turn = round(mark - self.reading, self.scale.decimals)
        return turn if self.scale.decimals else int(turn)

    def ask(self) -> Amount:
        return Amount(
            name="turn",
            legend=f"By how much do you turn {self.knob}? Turning it down has a minus.",
            unit=self.scale.unit,
            least=-999,
            most=999,
            decimals=self.scale.decimals,
            signed=True,
        )

    def why(self) -> str:
        scale = self.scale
        return f"It reads {scale.told(self.reading)} and belongs at {scale.told(scale.mark)}."


@dataclass(frozen=True, slots=True, kw_only=True)
class Choosing:
    """A second question: `right` gives the answer of somebody with these beliefs."""

    name: str
    legend: str
    texts: Mapping[str, str]
    right: Callable[[Collection[str]], str]
    beliefs: Sequence[str]
    why: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LevelsCase:
    """What is recorded, what is read of it, and what is asked."""

    name: str
    story: str
    facts: Sequence[tuple[str, str]]
    rule: Rule
    turn: Turn | None = None
    choosing: Choosing | None = None

    def beliefs(self) -> list[str]:
        held = [*(self.turn.lures if self.turn else ())]
        return [*held, *(self.choosing.beliefs if self.choosing else ())]

    def answer(self, beliefs: Collection[str] = ()) -> Json:
        found: Json = {}
        if self.turn:
            found["turn"] = self.turn.by(beliefs)
        if self.choosing:
            found[self.choosing.name] = self.choosing.right(beliefs)
        return found

    def why(self) -> Json:
        """Why each part of the answer is right."""
        found = {"turn": self.turn.why()} if self.turn else {}
        return {**found, **({self.choosing.name: self.choosing.why} if self.choosing else {})}
