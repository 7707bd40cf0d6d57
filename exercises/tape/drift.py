"""How a player's adjustment wanders while the tape runs, second by second."""

from collections.abc import Iterator
from itertools import count, islice
from random import Random
from typing import NamedTuple

from exercises.tape.machines import Drift, Player
from exercises.tape.rate import Rate
from exercises.tape.work import spend

REEL = 600  # seconds in which tracking moves by what is told of a reel


class Adjustment(NamedTuple):
    """From ``frame`` of the recording on: tracking error in percent, skew in 0.1 µs."""

    frame: int
    tracking: int
    skew: int


def adjustments(player: Player, frames: int, rate: Rate) -> tuple[Adjustment, ...]:
    """What holds in each second of a recording's first ``frames``; once if nothing wanders.

    A seed always wanders the same way.
    """
    if player.drift is None:
        return (Adjustment(0, player.tracking, player.skew),)
    seconds = -(-frames // rate.nominal)
    spend(2 * seconds)
    return tuple(
        Adjustment(second * rate.nominal, tracking, skew)
        for second, (tracking, skew) in enumerate(islice(_wandering(player, player.drift), seconds))
    )


def _wandering(player: Player, drift: Drift) -> Iterator[tuple[int, int]]:
    random = Random(drift.seed)
    tracking, skew = float(player.tracking), float(player.skew)
    for second in count():
        yield round(tracking + drift.reel * second / REEL), round(skew)
        tracking += drift.tracking * (2 * random.random() - 1)
        skew += drift.skew * (2 * random.random() - 1)
