"""Sound as a WAV file of 16 bits, for a browser's own player."""

import io
import wave
from collections.abc import Iterable, Iterator

import numpy as np
from numpy.typing import NDArray

from exercises.signal.sound.samples import RATE, Samples

LONGEST = 60 * RATE  # samples that are made into one file at once

Held = NDArray[np.int16]


def sixteen_bits(samples: Samples) -> Held:
    """Full scale as whole numbers; what is beyond it is cut off."""
    return np.round(np.clip(samples, -1, 1) * (2**15 - 1)).astype("<i2")


def header(samples: int) -> bytes:
    """The beginning of a file that so many samples follow."""
    held = io.BytesIO()
    with wave.open(held, "wb") as file:
        file.setparams((1, 2, RATE, samples, "NONE", ""))
        file.writeframesraw(b"")
        return held.getvalue()


def streamed(pieces: Iterable[Samples], samples: int) -> Iterator[bytes]:
    """The file piece by piece; ``samples`` is how many the pieces have together."""
    yield header(samples)
    for piece in pieces:
        yield sixteen_bits(piece).tobytes()


def file(samples: Samples) -> bytes:
    """The whole file. ValueError if it would be longer than a minute."""
    if len(samples) > LONGEST:
        raise ValueError("A clip lasts a minute at most.")
    return b"".join(streamed([samples], len(samples)))
