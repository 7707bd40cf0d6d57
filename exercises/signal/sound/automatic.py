"""Automatic gain at work."""

from collections.abc import Iterator
from math import exp

import numpy as np

from exercises.signal.sound.gains import blocks, gained_along
from exercises.signal.sound.samples import LINE_UP, Samples
from exercises.tape.gain_control import AutomaticGain
from exercises.tape.levels import decibels

# In ms: how fast what it goes by follows the power of the sound (common practice).
RISE, FALL = 10, 5


class Following:
    """A gain that follows the sound by the arithmetic of ``AutomaticGain``.

    Keeps where it is from call to call: give it whole milliseconds, but for the end of a
    recording.
    """

    def __init__(self, control: AutomaticGain, *, gain: float = 0) -> None:
        self.control = control
        self.gain = gain
        self._power = 0.0

    def apply(self, samples: Samples) -> Samples:
        heard = 2 * np.square(blocks(samples), dtype=np.float64).mean(axis=1) / LINE_UP**2
        return gained_along(samples, np.array([self.gain, *self._gains(heard.tolist())]))

    def _gains(self, heard: list[float]) -> Iterator[float]:
        for power in heard:
            constant = RISE if power > self._power else FALL
            self._power = power + (self._power - power) * exp(-1 / constant)
            level = decibels(max(self._power, 1e-12)) / 2
            self.gain = self.control.after(1, gain=self.gain, level=level)
            yield self.gain
