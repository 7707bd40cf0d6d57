"""The harbour at Quay Street: water at the wall, gulls, an engine far off."""

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from exercises.signal.meters.vu import peak
from exercises.signal.sound.noise import band, shaped
from exercises.signal.sound.samples import RATE
from exercises.signal.sound.soundtrack import Loop
from exercises.tape.levels import gained

LONG = 24 * RATE
STROKES = 7  # of the engine, a second

# Where in the loop a gull cries, in s; at what pitch it begins, in Hz; how often it cries.
GULLS = ((2.1, 1450, 3), (9.4, 1240, 5), (16.8, 1620, 2), (18.0, 1310, 4))
CRY, BETWEEN = 0.32, 0.12  # s


@lru_cache
def harbour() -> Loop:
    """All of it, with a VU meter's needle reaching line-up at the loudest."""
    heard = (water() + 1.2 * engine() + 2.5 * gulls()).astype(np.float32)
    return Loop(heard * np.float32(gained(1, -peak(heard))))


def water() -> NDArray[np.float64]:
    """Lapping: noise in a band, that comes and goes every other second or so."""
    lap = shaped(21, LONG, lambda hertz: np.exp(-((hertz - 0.45) ** 2) / 0.04))
    swell = np.exp(0.4 * lap) / 4
    splash = shaped(22, LONG, band(300, 900)) * swell
    return np.asarray(splash + 0.1 * shaped(23, LONG, band(40, 120)))


def engine() -> NDArray[np.float64]:
    """A slow engine with the highs lost on the way: a thump at each stroke."""
    stroke = np.arange(LONG) * STROKES % RATE / RATE
    thump = np.sin(2 * np.pi * 62 * stroke / STROKES) * np.exp(-9 * stroke)
    drift = shaped(24, LONG, lambda hertz: np.exp(-((hertz / 0.15) ** 2)))
    return np.asarray(thump * (1 + 0.25 * drift))


def gulls() -> NDArray[np.float64]:
    sky = np.zeros(LONG)
    for second, pitch, cries in GULLS:
        for each in range(cries):
            start = int((second + each * (CRY + BETWEEN)) * RATE)
            cry = _cry(pitch * (1 - 0.03 * each)) * 0.9**each
            sky[start : start + len(cry)] += cry
    return sky


def _cry(pitch: float) -> NDArray[np.float64]:
    """A harsh call: up at first, then falling, with overtones."""
    through = np.arange(int(CRY * RATE)) / (CRY * RATE)
    bend = 0.75 + 0.35 * np.sin(np.pi * through**0.6) - 0.2 * through
    turns = 2 * np.pi * np.cumsum(pitch * bend) / RATE
    call = sum(np.sin(order * turns) / order for order in range(1, 5))
    return np.asarray(call * np.sin(np.pi * through) ** 0.7 * 0.35)
