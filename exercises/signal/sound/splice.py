"""Stretches of sound butted together."""

from collections.abc import Iterable, Iterator

import numpy as np

from exercises.signal.sound.samples import BLOCK, Samples

# At a cut the recording heads let go of one sound while they take the other: that long
# (common practice). Without it each cut would click.
RAMP = 2 * BLOCK

_RISE = np.linspace(0, 1, RAMP, endpoint=False, dtype=np.float32)


def butted(stretches: Iterable[Iterable[Samples]]) -> Iterator[Samples]:
    """Stretches, each in pieces, one after another.

    Each is longer by RAMP than what is heard of it alone: there it gives way to the next,
    and is left out at the very end. None is shorter than twice that.
    """
    leaving: Samples | None = None
    for stretch in stretches:
        held = np.empty(0, np.float32)
        for piece in stretch:
            held = np.concatenate((held, piece))
            if len(held) < 2 * RAMP:
                continue
            if leaving is not None:
                held[:RAMP] = held[:RAMP] * _RISE + leaving * (1 - _RISE)
                leaving = None
            yield held[:-RAMP]
            held = held[-RAMP:]
        if len(held) > RAMP:
            yield held[:-RAMP]
        leaving = held[-RAMP:]


def cut(before: Samples, after: Samples, *, out: int, in_: int) -> Samples:
    """``before`` up to the sample ``out``, then ``after`` from its sample ``in_`` on."""
    lasting = np.pad(before[: out + RAMP], (0, max(0, out + RAMP - len(before))))
    return np.concatenate(list(butted([[lasting], [np.pad(after[in_:], (0, RAMP))]])))
