"""Speech brought to line-up level, as a careful recordist would."""

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray

from exercises.signal.meters.vu import peak
from exercises.signal.sound.samples import BLOCK, LINE_UP, SPEECH_PEAKS
from exercises.tape.levels import gained

ROUNDS = 6  # each brings level and peaks closer to where they should both be


def levelled(wave: NDArray[np.float64]) -> NDArray[np.float64]:
    """A VU meter's needle reaches 0 at the loudest, the peaks stand at most SPEECH_PEAKS over.

    The peaks are turned down, not cut off: synthetic vowels have higher ones than a voice.
    """
    for _ in range(ROUNDS):
        wave = _turned_down(wave, gained(LINE_UP, SPEECH_PEAKS))
        wave = wave * gained(1, -peak(wave.astype(np.float32)))
    return _turned_down(wave, gained(LINE_UP, SPEECH_PEAKS))


def _turned_down(wave: NDArray[np.float64], most: float) -> NDArray[np.float64]:
    """The wave where it stays below ``most``, turned down for some ms around where it doesn't."""
    blocks = np.pad(np.abs(wave), (0, -len(wave) % BLOCK)).reshape(-1, BLOCK).max(axis=1)
    around = sliding_window_view(np.pad(blocks, 8), 17).max(axis=1)
    gains = np.minimum(1, most / np.maximum(around, most))
    smooth = sliding_window_view(np.pad(gains, 4, mode="edge"), 9).mean(axis=1)
    middles = np.arange(len(gains)) * BLOCK + BLOCK / 2
    return np.asarray(wave * np.interp(np.arange(len(wave)), middles, smooth))
