"""The recursion behind filters and needles, worked out for many samples at once."""

from math import log

import numpy as np
from numpy.typing import NDArray

LONGEST = 4096  # samples in a chunk
SPREAD = log(1e8)  # how far a pole's powers may spread within a chunk and stay exact enough


def one_pole(
    driven: NDArray[np.float64], pole: complex, state: complex = 0
) -> tuple[NDArray[np.complex128], complex]:
    """``y[n] = pole * y[n-1] + driven[n]``, and the last y, to go on from.

    Within a chunk the powers of the pole come out of the sum, which leaves a running sum;
    only from chunk to chunk is it a loop.
    """
    if not len(driven):
        return np.empty(0, np.complex128), state
    chunk = _chunk(pole, len(driven))
    rows = -(-len(driven) // chunk)
    padded = np.zeros(rows * chunk)
    padded[: len(driven)] = driven
    powers = np.power(complex(pole), np.arange(chunk))
    out = np.cumsum(padded.reshape(rows, chunk) / powers, axis=1) * powers
    ends, whole = out[:, -1].copy(), complex(pole) ** chunk
    for row in range(rows):
        out[row] += state * pole * powers
        state = state * whole + complex(ends[row])
    flat = np.asarray(out.ravel()[: len(driven)], np.complex128)
    return flat, complex(flat[-1])


def _chunk(pole: complex, most: int) -> int:
    fall = -log(abs(pole)) if pole else SPREAD
    return max(1, min(most, LONGEST, int(SPREAD / max(fall, SPREAD / LONGEST))))
