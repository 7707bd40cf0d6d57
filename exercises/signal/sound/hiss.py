"""The noise floor of a sound track, copy by copy."""

import numpy as np

from exercises.signal.sound.noise import hiss
from exercises.signal.sound.samples import Samples
from exercises.tape.levels import gained
from exercises.tape.noise import equal_copies_snr

# Signal-to-noise of one recording of the sound track in dB, from line-up tone to hiss, rms
# (common practice for a track along the edge).
SNR = 48


def hissing(start: int, count: int, *, recordings: int, seed: int) -> Samples:
    """The hiss of so many recordings one after another; its powers add."""
    if not recordings:
        return np.zeros(count, np.float32)
    level = -10 * equal_copies_snr(SNR, recordings)
    return hiss(seed).read(start, count) * np.float32(gained(1, level))
