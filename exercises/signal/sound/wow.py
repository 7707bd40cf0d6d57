"""Wow: what is heard while a machine's speed swings, before it is locked or for want of pulses."""

from collections.abc import Iterable
from dataclasses import dataclass
from math import pi

import numpy as np
from numpy.typing import NDArray

from exercises.signal.sound.samples import RATE, Samples
from exercises.signal.sound.soundtrack import Sound

SWINGS = 2.5  # a second (common practice: a servo hunts a few times a second)
MOST = 0.04  # of the speed, as it begins (common practice)
SWING = MOST * RATE / (2 * pi * SWINGS)  # samples that it leads or lags by


@dataclass(frozen=True, slots=True)
class Unsteady:
    """A stretch of samples, ``[start, end)``, in which a machine swings ever less.

    Where it never ``settles``, for want of pulses, it swings on and on, at about its speed.
    """

    start: int
    end: int
    settles: bool = True

    def lead(self, positions: NDArray[np.int64]) -> NDArray[np.float64]:
        """By how many samples it is ahead; 0 where the stretch begins and ends, and outside."""
        through = np.clip((positions - self.start) / (self.end - self.start), 0, 1)
        turns = SWINGS / RATE * (positions - self.start)
        left = (1 - through) ** 2 if self.settles else np.minimum(1, (1 - through) * self._swings)
        return np.asarray(SWING * left * np.sin(2 * pi * turns) * (through > 0))

    @property
    def _swings(self) -> float:
        """How often it swings in all: the last of them leads out."""
        return max(1.0, SWINGS * (self.end - self.start) / RATE)


def read_unsteadily(
    sound: Sound, start: int, positions: NDArray[np.int64], unsteady: Iterable[Unsteady]
) -> Samples:
    """As many samples from ``start`` on, while the machine is at these positions."""
    reach = 2 * (int(SWING) + 1)  # the source may have been unsteady, and the player too
    lead = sum((each.lead(positions) for each in unsteady), np.zeros(len(positions)))
    if not lead.any():
        return sound.read(start, len(positions))
    near = sound.read(start - reach, len(positions) + 2 * reach)
    taken = np.arange(len(positions)) + reach + lead
    return np.interp(taken, np.arange(len(near)), near).astype(np.float32)
