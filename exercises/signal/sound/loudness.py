"""How loud a sound is from picture to picture: for lips that move with the words."""

import numpy as np
from numpy.typing import NDArray

from exercises.signal.sound.samples import LINE_UP, sample_at
from exercises.signal.sound.soundtrack import Sound
from exercises.tape.rate import Rate


def loudness(sound: Sound, *, start: int, frames: int, rate: Rate) -> NDArray[np.float32]:
    """For each frame from ``start`` on: 0 for silence, 1 for a tone at line-up.

    It is the root mean square, and comes to about 1.6 in speech.
    """
    ends = np.array([sample_at(start + each, rate) for each in range(frames + 1)])
    power = sound.read(int(ends[0]), int(ends[-1] - ends[0])).astype(np.float64) ** 2
    means = np.add.reduceat(power, (ends - ends[0])[:-1]) / np.diff(ends)
    return np.sqrt(2 * means).astype(np.float32) / np.float32(LINE_UP)
