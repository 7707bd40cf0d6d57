"""Noise made once and shifted about, frame by frame: what it looks like, not where it lies.

Seeds go to numpy's PCG64; where a tile is read from comes from ``random.Random``.
"""

from functools import lru_cache
from random import Random

import numpy as np

from exercises.signal.arrays import Plane, Quarters
from exercises.signal.picture.components import QUARTER

UNIT = 48  # standard deviation of a noise tile
SPARE = 96  # rows and columns that a tile has more than what is read from it
DENSITIES = (0.004, 0.012, 0.03, 0.07, 0.15, 0.35)  # streaks begun in each column of a row


def _generator(seed: int) -> np.random.Generator:
    return np.random.Generator(np.random.PCG64(seed))


def placed(n: int, purpose: int) -> tuple[int, int]:
    """Where in a tile frame ``n`` is read from: never twice alike in a row."""
    random = Random(n * 64 + purpose)
    return int(random.random() * SPARE), int(random.random() * SPARE)


def window(tile: Quarters, rows: int, columns: int, place: tuple[int, int]) -> Quarters:
    return tile[place[0] : place[0] + rows, place[1] : place[1] + columns]


@lru_cache(maxsize=8)
def fine(rows: int, columns: int) -> Quarters:
    """Noise of single pixels, standard deviation ``UNIT``."""
    raw = _generator(1).standard_normal((rows + SPARE, columns + SPARE), dtype=np.float32)
    return _whole(raw * UNIT)


@lru_cache(maxsize=8)
def coloured(rows: int, columns: int) -> Quarters:
    """Noise as the narrow colour channel passes it, in short dashes; the same deviation."""
    raw = _generator(2).standard_normal((rows + SPARE, columns + SPARE + 1), dtype=np.float32)
    return _whole((raw[:, 1:] + raw[:, :-1]) * (UNIT / 2**0.5))


@lru_cache(maxsize=8)
def snowy(rows: int, columns: int) -> Quarters:
    """What heads find where nothing is recorded: grains two or three pixels long."""
    raw = _generator(3).standard_normal((rows + SPARE, columns + SPARE + 2), dtype=np.float32)
    drawn = 0.55 * raw[:, :-2] + 0.85 * raw[:, 1:-1] + 0.55 * raw[:, 2:]
    return _whole(np.clip(96 + 82 * drawn, 0, 255) * QUARTER)


@lru_cache(maxsize=8)
def streaked(columns: int) -> Quarters:
    """Rows of streaks, densities × 256 rows × columns: each bright at once and fading behind.

    The fewer the carrier's cycles that are lost, the fewer streaks; three in four are white.
    """
    sheets = [_streaks(columns + SPARE, density, seed) for seed, density in enumerate(DENSITIES)]
    return np.stack(sheets)


def _streaks(columns: int, density: float, seed: int) -> Quarters:
    generator = _generator(100 + seed)
    shape = (256, columns)
    begun = generator.random(shape, dtype=np.float32) < density
    height = generator.exponential(150, shape) * np.where(generator.random(shape) < 0.75, 1, -0.6)
    drawn = np.where(begun, np.clip(height, -130, 330), 0).astype(np.float32)
    fade = np.where(generator.random((256, 1)) < 0.8, 0.72, 0.90).astype(np.float32)
    for column in range(1, columns):
        drawn[:, column] += drawn[:, column - 1] * fade[:, 0]
    return _whole(np.clip(drawn, -160, 300) * QUARTER)


def _whole(tile: Plane) -> Quarters:
    whole = np.rint(tile).astype(np.int16)
    whole.setflags(write=False)
    return whole
