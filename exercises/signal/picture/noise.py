"""Noise of the whole chain of recordings."""

from math import floor, isinf, log2

import numpy as np

from exercises.signal.arrays import Plane, Quarters
from exercises.signal.picture.components import QUARTER, Components
from exercises.signal.picture.look import Look
from exercises.signal.picture.tiles import UNIT, coloured, fine, placed, window

PLAYED = 46.0  # dB of one playing, on the track: the tape model's usual recording
LEAST = 0.2  # of the signal: below, it is streaks and snow, not noise, that grow
MOST = 120  # times a tile's greatest, some 5 UNITs, fits 16 bits
COLOUR = 1.3  # how much stronger it is in the colour than in luma (common practice)


def deviation(snr: float) -> float:
    """Standard deviation of noise, where black to white is 255, at so many dB.

    >>> round(deviation(46), 2)
    1.28
    """
    return 0.0 if isinf(snr) else float(255 / 10 ** (snr / 20))


def add_noise(parts: Components, look: Look, n: int, seen: Plane | None = None) -> None:
    """``seen``: the heads' signal by rows, 0 to 1; as it falls, the noise of playing grows."""
    strength = _strength(look, seen)
    if not strength.any():
        return
    rows, columns = parts.luma.shape
    _add(parts.luma, window(fine(rows, columns), rows, columns, placed(n, 1)), strength)
    _, half, coarse = parts.colour.shape
    tile = window(coloured(rows, coarse), rows, coarse, placed(n, 2))
    _add(parts.colour, tile.reshape(2, half, coarse), COLOUR * strength[::2])


def _add(plane: Quarters, tile: Quarters, strength: Plane) -> None:
    """A tile times its strength by rows, in whole numbers of as many binary places as fit."""
    top = float(strength.max()) * QUARTER / UNIT
    places = max(0, floor(log2(MOST / top)))
    noise = tile * np.rint(strength * (2**places * QUARTER / UNIT)).astype(np.int16)
    noise += np.int16(2**places // 2)
    noise >>= places
    plane += noise


def _strength(look: Look, seen: Plane | None) -> Plane:
    """Standard deviation of the noise in shades, by rows or for all of them: rows or 1 × 1."""
    chain = deviation(look.snr)
    if seen is None:
        return np.full((1, 1), chain, np.float32)
    more = (1 / np.maximum(seen, LEAST)) ** 2 - 1
    grown: Plane = np.sqrt(chain**2 + deviation(PLAYED) ** 2 * more)
    return grown[:, None]
