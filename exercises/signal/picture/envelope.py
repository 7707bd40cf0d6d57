"""The heads' signal along a field, and what is lost where it falls too far."""

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from exercises.signal.arrays import Plane, Quarters
from exercises.signal.picture.components import Components
from exercises.signal.picture.look import Look
from exercises.signal.picture.tiles import DENSITIES, placed, snowy, streaked, window
from exercises.tape.geometry import envelope_loss

BOW = 0.22  # of a track: how far a track laid by another machine strays (common practice)
HELD = 0.32  # of the signal: 10 dB down, the limiter holds it no more


def heads_signal(look: Look, rows: int) -> Plane:
    """The signal along the field: dirt takes its share everywhere alike."""
    return envelope(rows, look.tracking) * np.float32(10 ** (-look.dirt / 20))


def envelope(rows: int, tracking: float) -> Plane:
    """The signal along the field, 1 on the track to 0 off it, by rows; tracking in percent.

    It falls in a straight line (`exercises.tape.geometry`). No track is quite straight to
    another machine's heads, so that it doesn't fall alike everywhere: first in a band.
    """
    return seen_at(tracking + 100 * bow(rows))


def seen_at(tracking: Plane) -> Plane:
    """The signal, 0 to 1, at errors in percent of a track."""
    off = np.abs(tracking)
    seen: Plane = np.interp(off, np.arange(101), _signal()).astype(np.float32)
    return seen


def bow(rows: int) -> Plane:
    """How far the track strays along the field, as a share of its width; 0 on average."""
    along = (np.arange(rows, dtype=np.float32) + 0.5) / rows
    return np.float32(BOW) * np.sin(2 * np.pi * (along - 0.45)).astype(np.float32)


@lru_cache(maxsize=1)
def _signal() -> list[float]:
    """At each percent; between them it is straight."""
    return [10 ** (-envelope_loss(percent) / 200) for percent in range(101)]


def lose_carrier(parts: Components, seen: Plane, n: int) -> None:
    """Noise, streaks, and at last nothing but snow, in the rows where the signal is weak."""
    weak = np.flatnonzero(seen < HELD)
    if not weak.size:
        return
    rows, columns = parts.luma.shape
    lost = 1 - np.clip(seen[weak] / HELD, 0, 1)
    luma = parts.luma[weak]
    luma += _streaks(weak, lost, columns, n)
    gone = np.clip(lost * 1.7 - 0.7, 0, 1)
    dead = np.flatnonzero(gone)
    if dead.size:
        snow = window(snowy(rows, columns), rows, columns, placed(n, 4))[weak[dead]]
        luma[dead] += (snow - luma[dead]) * _eighths(gone[dead]) >> 3
    parts.luma[weak] = luma
    pairs = np.flatnonzero(seen[::2] < HELD)
    kept = _eighths(np.clip(1.6 * seen[::2][pairs] / HELD - 0.4, 0, 1))
    parts.colour[:, pairs] = parts.colour[:, pairs] * kept >> 3


def _eighths(share: Plane) -> Quarters:
    return np.rint(8 * share).astype(np.int16)[:, None]


def _streaks(weak: NDArray[np.intp], lost: Plane, columns: int, n: int) -> Quarters:
    sheets = streaked(columns)
    down, across = placed(n, 5)
    sheet = np.minimum((lost * len(DENSITIES)).astype(np.intp), len(DENSITIES) - 1)
    drawn: Quarters = sheets[sheet, (weak * 37 + down * 3) % 256, across : across + columns]
    return drawn
