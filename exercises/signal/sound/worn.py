"""A worn edge of a tape: the sound dips for a moment, again and again, whatever is edited.

The sound track lies along an edge, which suffers first; where it is creased or has lost its coat,
the head is held off and reads less (common practice). Where the dips come, how deep and how long
they are is this course's own choice; no two follow at one distance, so that none sounds made.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

import numpy as np

from exercises.signal.sound.samples import RATE, Samples
from exercises.signal.sound.soundtrack import Sound

ROUND = 4300  # ms after which the dips come again
RAMP = 15  # ms in which the level falls, and comes back


class Dip(NamedTuple):
    """`[start, end)` in ms, and by how many tenths of a dB the level falls."""

    start: int
    end: int
    depth: int


# Where there is no dip for a second: ms of a round in the middle of it.
CALM = (2850, 4070)
DIPS = (Dip(300, 480, -150), Dip(1250, 1360, -200), Dip(2050, 2300, -140), Dip(3400, 3540, -180))


def dips(start: int, end: int, *, since: int = 0) -> Iterator[Dip]:
    """Those of a tape in `[start, end)` ms, in order; a round of them begins at `since`."""
    for turn in range((start - since) // ROUND, (end - since) // ROUND + 1):
        for dip in DIPS:
            begun = since + turn * ROUND
            placed = Dip(dip.start + begun, dip.end + begun, dip.depth)
            if placed.start < end and placed.end > start:
                yield placed


@lru_cache
def _level() -> Samples:
    """What one round of the dips leaves of the level, sample by sample."""
    at = np.arange(ROUND * RATE // 1000) * 1000 / RATE
    tenths = np.zeros(len(at))
    for start, end, depth in DIPS:
        tenths += np.interp(at, (start, start + RAMP, end - RAMP, end), (0, depth, depth, 0))
    return np.power(10, tenths / 200).astype(np.float32)


@dataclass(frozen=True, slots=True)
class Worn:
    """A sound as a tape with a worn edge gives it; a round of dips begins at `since` ms."""

    sound: Sound
    since: int = 0

    def read(self, start: int, count: int) -> Samples:
        level, first = _level(), start - self.since * RATE // 1000
        return self.sound.read(start, count) * np.take(
            level, np.arange(first, first + count), mode="wrap"
        )
