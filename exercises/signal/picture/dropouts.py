"""Dropouts: the signal gone for a few microseconds, where oxide is lost or dirt lies."""

from math import exp, log
from random import Random

from exercises.signal.picture.components import QUARTER, Components
from exercises.signal.picture.look import Look

SHORTEST = 0.5  # µs: none is shorter (published for 25.4 mm tape)
WHITE = 235 * QUARTER
USUAL = 5.0  # µs: the mean beyond the shortest; the shorter, the more there are


def drop_out(parts: Components, look: Look, n: int) -> None:
    """White, with a dark end, for as long as nothing is read."""
    random = Random(n * 64 + 6)
    rows, columns = parts.luma.shape
    for _ in range(_count(random, look.dropouts)):
        row, start = int(random.random() * rows), int(random.random() * columns)
        long = look.lines.pixels(SHORTEST - USUAL * log(1 - random.random()), columns)
        end = min(columns, start + max(2, round(long)))
        parts.luma[row, start:end] = WHITE
        parts.luma[row, end : end + 3] //= 3


def _count(random: Random, mean: float) -> int:
    """How many there are in this frame: Poisson, by multiplying."""
    left, count = random.random(), 0
    while left > exp(-mean):
        left *= random.random()
        count += 1
    return count
