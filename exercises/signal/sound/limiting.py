"""The limiter at work."""

from collections.abc import Iterator
from math import exp

import numpy as np

from exercises.signal.sound.gains import blocks, gained_along
from exercises.signal.sound.samples import LINE_UP, SPEECH_PEAKS, Samples
from exercises.tape.gain_control import Limiter
from exercises.tape.levels import decibels

RELEASE = 300  # ms, in which what it goes by falls to 37 % (common practice)


class Limiting:
    """Turns peaks down at once, and back up within its release.

    The limiter's curve is for levels as a meter shows them; ``peaks`` says, in tenths of a
    dB, how far over those the sound's own peaks stand. Keeps where it is from call to
    call: give it whole milliseconds, but for the end of a recording.
    """

    def __init__(self, limiter: Limiter, *, peaks: int = SPEECH_PEAKS) -> None:
        self.limiter = limiter
        self.peaks = peaks
        self.gain = 0.0
        self._peak = 0.0

    def apply(self, samples: Samples) -> Samples:
        heard = np.abs(blocks(samples)).max(axis=1) / LINE_UP
        return gained_along(samples, np.array([self.gain, *self._gains(heard.tolist())]))

    def _gains(self, heard: list[float]) -> Iterator[float]:
        fall = exp(-1 / RELEASE)
        for peak in heard:
            self._peak = max(peak, self._peak * fall)
            level = decibels(max(self._peak, 1e-6)) - self.peaks
            self.gain = self.limiter.out(level) - level
            yield self.gain
