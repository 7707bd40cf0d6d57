"""A recorder's sound channel: the knob, limiter or automatic gain, the tape, its hiss."""

import numpy as np

from exercises.signal.sound.automatic import Following
from exercises.signal.sound.hiss import hissing
from exercises.signal.sound.limiting import Limiting
from exercises.signal.sound.samples import Samples
from exercises.signal.sound.saturation import saturated
from exercises.tape.bench import Bench
from exercises.tape.levels import Levels, gained
from exercises.tape.machines import SoundLevel, SoundMode


class SoundChannel:
    """One recording: keeps where its gain is from call to call.

    Give it whole milliseconds, but for the end. ``carried`` is what comes in, so that
    automatic gain begins at rest, as after speech.
    """

    def __init__(self, setting: SoundLevel, bench: Bench, carried: Levels) -> None:
        self._knob = np.float32(gained(1, setting.gain))
        self._gain: Limiting | Following | None = None
        if setting.mode is SoundMode.LIMITER:
            self._gain = Limiting(bench.limiter)
        elif setting.mode is SoundMode.AUTOMATIC:
            rest = bench.automatic_gain.settled(carried.sound + setting.gain)
            self._gain = Following(bench.automatic_gain, gain=rest)

    def record(self, samples: Samples) -> Samples:
        """What the tape holds of them, but for its hiss."""
        louder = samples * self._knob
        return saturated(self._gain.apply(louder) if self._gain else louder)


def recorded(samples: Samples, setting: SoundLevel, bench: Bench, carried: Levels) -> Samples:
    """A whole recording at once, from its first sample, with the hiss of its tape."""
    held = SoundChannel(setting, bench, carried).record(samples)
    return held + hissing(0, len(held), recordings=1, seed=1)
