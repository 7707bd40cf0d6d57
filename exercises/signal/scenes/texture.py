"""Surfaces: soft noise and what can be made of it. Seeds go to numpy's PCG64."""

from functools import lru_cache

import numpy as np
from PIL import Image

from exercises.signal.arrays import Plane, Size


def _cells(columns: int, rows: int, seed: int) -> Image.Image:
    cells = np.random.Generator(np.random.PCG64(seed)).random((rows, columns), dtype=np.float32)
    return Image.fromarray(cells)


def soft_noise(size: Size, across: float, down: float, seed: int) -> Plane:
    """Smooth noise around 0, about -0.5 to 0.5, with so many bumps across and down."""
    columns, rows = max(2, round(across)), max(2, round(down))
    smooth = _cells(columns, rows, seed).resize(size, Image.Resampling.BICUBIC)
    return np.asarray(smooth) - np.float32(0.5)


@lru_cache(maxsize=6)
def clouded(
    size: Size, across: float, down: float, *, seed: int, octaves: int = 4, fall: float = 0.5
) -> Plane:
    """Noise with detail at ``octaves`` scales, each finer one ``fall`` as strong."""
    total = np.zeros((size[1], size[0]), np.float32)
    strength = 1.0
    for octave in range(octaves):
        finer = 2**octave
        total += np.float32(strength) * soft_noise(
            size, across * finer, down * finer, seed + octave
        )
        strength *= fall
    total.setflags(write=False)
    return total


def grain(size: Size, seed: int) -> Plane:
    """Noise of single pixels, around 0, standard deviation 1."""
    generator = np.random.Generator(np.random.PCG64(seed))
    return generator.standard_normal((size[1], size[0]), dtype=np.float32)


def bricks(size: Size, course: float, seed: int) -> tuple[Plane, Plane]:
    """A wall whose courses are so many pixels high: shade of each brick, and joints (0 to 1)."""
    rows, columns = np.mgrid[0 : size[1], 0 : size[0]].astype(np.float32)
    rows += 1.2 * clouded(size, 20, 40, seed=seed)
    columns += 2.4 * clouded(size, 40, 20, seed=seed + 9)
    layer = np.floor(rows / course)
    along = columns / (course * 2.9) + 0.5 * (layer % 2)
    brick = np.floor(along)
    shade = np.modf(np.abs(np.sin(layer * 12.9898 + brick * 78.233 + seed) * 43758.547))[0]
    down = np.abs(rows / course - layer - 0.5) * course
    across = np.abs(along - brick - 0.5) * course * 2.9
    gap = np.minimum(course / 2 - down, course * 1.45 - across)
    return shade.astype(np.float32), np.clip(1.4 - gap / (course * 0.09), 0, 1).astype(np.float32)


def planks(size: Size, width: float, seed: int) -> tuple[Plane, Plane]:
    """Upright boards so many pixels wide: shade with their grain, and gaps between (0 to 1)."""
    columns = np.arange(size[0], dtype=np.float32)
    board = np.floor(columns / width)
    shade = np.modf(np.abs(np.sin(board * 91.7 + seed) * 4758.5453))[0].astype(np.float32)
    lines = clouded(size, size[0] / 5, 3, seed=seed, octaves=3, fall=0.7)
    gap = np.abs(columns / width - board - 0.5) * width
    gaps = np.clip(1 - (width / 2 - gap) / 1.6, 0, 1)[None, :] * np.ones((size[1], 1), np.float32)
    return shade[None, :] - 0.5 + lines, gaps.astype(np.float32)
