"""The situations that sessions are made from. Each returns the rule that it is about."""

from collections.abc import Callable

from exercises.drills.draw import Draw
from exercises.drills.spot_described.situations.going_well import WELL
from exercises.drills.spot_described.situations.going_wrong import FAULTY
from exercises.drills.spot_described.work import Work

Situation = Callable[[Work], str]


def drawn(draw: Draw) -> Situation:
    """One in three goes well."""
    return draw.pick(draw.pick((WELL, FAULTY, FAULTY)))


def name(situation: Situation) -> str:
    return situation.__name__.replace("_", "-")
