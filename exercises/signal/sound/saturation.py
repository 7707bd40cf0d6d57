"""Tape that is asked to hold more than it can."""

import numpy as np

from exercises.signal.sound.samples import LINE_UP, Samples
from exercises.tape.levels import gained

# Level of a tone, in tenths of a dB over line-up, of which the tape makes 3 % of third
# harmonic: what is called a tape's maximum output level. That it lies as far over line-up as
# programme may peak is common practice.
MOST = 90

# The curve bends so that its third harmonic is 3 % at this share of where it would end.
SHARE = 0.6288
BEND = gained(LINE_UP, MOST) / SHARE

# Machines are aligned with line-up tone: it leaves as it came, though the curve takes 1 % of it.
ALIGNED = 1.0124
CEILING = ALIGNED * BEND


def saturated(samples: Samples) -> Samples:
    """What comes back from the tape: line-up level as it was, louder ever less of it."""
    return np.asarray(np.tanh(samples / np.float32(BEND)) * np.float32(CEILING))
