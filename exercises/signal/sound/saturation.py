"""Tape that is asked to hold more than it can."""

import numpy as np

from exercises.signal.sound.samples import LINE_UP, Samples
from exercises.tape.levels import gained

# Level of a tone, in tenths of a dB over line-up, of which the tape makes 3 % of third
# harmonic: what is called a tape's maximum output level. It lies where the true peaks of
# programme at its permitted maximum end: 9 dB over alignment level, and 3 more (EBU R 68).
MOST = 120

# The curve bends so that its third harmonic is 3 % at this share of where it would end.
SHARE = 0.6288
BEND = gained(LINE_UP, MOST) / SHARE

# Machines are aligned with line-up tone: what the curve takes of it is made good.
ALIGNED = 1.0062
CEILING = ALIGNED * BEND


def saturated(samples: Samples) -> Samples:
    """What comes back from the tape: line-up level as it was, louder ever less of it."""
    return np.asarray(np.tanh(samples / np.float32(BEND)) * np.float32(CEILING))
