"""Luma and colour apart, as tape holds them."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from exercises.signal.arrays import Picture, Plane, Quarters
from exercises.signal.patterns.bars import LUMA

BLUE, RED = 2 - 2 * LUMA[2], 2 - 2 * LUMA[0]
QUARTER = 4  # of a shade
LOWEST, HIGHEST = -512, 1532  # of luma, and of colour either way: their difference times
MOST_COLOUR = 1000  # 16 fits 16 bits
BAND = 131072  # pixels worked on at a time
BATCH = 8  # rows multiplied at a time: more, and the library starts threads, which costs more


@dataclass(frozen=True, slots=True)
class Components:
    """What stages change in place.

    luma    rows × columns, 0 black to 1020 white
    colour  2 × half the rows × a share of the columns: the blue and the red difference
            (ITU-R BT.601), about -512 to 512
    """

    luma: Quarters
    colour: Quarters

    def limit(self) -> None:
        """To what later stages can work with; no screen shows so much."""
        np.clip(self.luma, LOWEST, HIGHEST, out=self.luma)
        np.clip(self.colour, -MOST_COLOUR, MOST_COLOUR, out=self.colour)

    @property
    def share(self) -> int:
        """Columns of luma to one of colour."""
        share: int = self.luma.shape[1] // self.colour.shape[2]
        return share


def coarseness(columns: int) -> int:
    """Columns of luma to one of colour.

    The narrow colour channel (0.5 MHz) takes 1 µs for the shortest change it can make, so
    that a line holds no more than some sixty. Comb filters make lines share their colour.
    """
    share = 8 if columns >= 512 else 4
    if columns % share:
        raise ValueError(f"The width of a picture must be a multiple of {share}, not {columns}.")
    return share


def components(picture: Picture, gain: float = 1.0) -> Components:
    """Taken apart, and amplified.

    The height must be even, the width a multiple of four, and from 512 on of eight.
    """
    rows, columns, _ = picture.shape
    share = coarseness(columns)
    if rows % 2:
        raise ValueError(f"The height of a picture must be even, not {rows}.")
    parts = Components(
        np.empty((rows, columns), np.int16), np.empty((2, rows // 2, columns // share), np.int16)
    )
    for first, last in _bands(rows, columns):
        half = slice(first // 2, last // 2)
        groups = picture[first:last].astype(np.float32).reshape(last - first, -1, 3 * share)
        _take_apart(groups, gain, Components(parts.luma[first:last], parts.colour[:, half]))
    return parts


def _take_apart(groups: Plane, gain: float, into: Components) -> None:
    luma, colour = _apart(into.share)
    into.luma[:] = (_batched(groups) @ (luma * np.float32(gain))).reshape(into.luma.shape)
    middle = slice(3 * into.share // 2 - 3, 3 * into.share // 2 + 3)
    differences = groups[::2, :, middle] @ (colour * np.float32(gain))
    into.colour[:] = np.moveaxis(differences, 2, 0)


def picture_of(parts: Components) -> Picture:
    """Put together again, between 0 and 255; colour is drawn straight between its columns."""
    rows, columns = parts.luma.shape
    whole = np.empty((rows, columns, 3), np.uint8)
    for first, last in _bands(rows, columns):
        half = slice(first // 2, last // 2)
        shown = _put_together(Components(parts.luma[first:last], parts.colour[:, half]))
        whole[first:last] = shown.reshape(last - first, columns, 3)
    return whole


def _put_together(parts: Components) -> Plane:
    rows, columns = parts.luma.shape
    grey, tinge = _together(parts.share)
    luma = parts.luma.astype(np.float32).reshape(rows, -1, parts.share)
    shown: Plane = (_batched(luma) @ grey).reshape(rows // 2, 2, 3 * columns)
    shown += (_batched(_neighbours(parts.colour)) @ tinge).reshape(rows // 2, 1, 3 * columns)
    return np.clip(shown, 0, 255, out=shown)


def _neighbours(colour: Quarters) -> Plane:
    """Rows × columns × 7: each difference before, here and after; and a half, which rounds."""
    near = np.empty((*colour.shape[1:], 7), np.float32)
    near[..., 6] = 0.5
    for first, plane in zip((0, 3), colour, strict=True):
        near[:, 1:, first] = plane[:, :-1]
        near[:, 0, first] = plane[:, 0]
        near[..., first + 1] = plane
        near[:, :-1, first + 2] = plane[:, 1:]
        near[:, -1, first + 2] = plane[:, -1]
    return near


def _bands(rows: int, columns: int) -> Iterator[tuple[int, int]]:
    """Rows that are worked on at a time, so that what is between stays in the cache."""
    step = max(2 * BATCH, BAND // columns // (2 * BATCH) * 2 * BATCH)
    for first in range(0, rows, step):
        yield first, min(first + step, rows)


def _batched(groups: Plane) -> Plane:
    """Rows × groups × numbers: as few rows at a time as multiply without threads."""
    rows, _, numbers = groups.shape
    return groups.reshape(rows // BATCH if rows % BATCH == 0 else rows, -1, numbers)


@lru_cache(maxsize=4)
def _apart(share: int) -> tuple[Plane, Plane]:
    """From red, green, blue: of ``share`` pixels to as many lumas, of two to two differences."""
    luma = np.zeros((3 * share, share), np.float32)
    colour = np.zeros((6, 2), np.float32)
    for band, part in enumerate(LUMA):
        for column in range(share):
            luma[3 * column + band, column] = QUARTER * part
        colour[band::3, 0] = ((band == 2) - part) / BLUE / 2 * QUARTER
        colour[band::3, 1] = ((band == 0) - part) / RED / 2 * QUARTER
    return luma, colour


@lru_cache(maxsize=4)
def _together(share: int) -> tuple[Plane, Plane]:
    """To ``share`` pixels: from as many lumas; from three neighbours of each difference, and 1."""
    grey = np.zeros((share, 3 * share), np.float32)
    tinge = np.zeros((7, 3 * share), np.float32)
    tinge[6] = 1
    for column in range(share):
        red, green, blue = (3 * column + band for band in range(3))
        grey[column, [red, green, blue]] = 1 / QUARTER
        for near, whole in enumerate(_parts((column + 0.5) / share - 0.5)):
            part = whole / QUARTER
            tinge[near, blue] = BLUE * part
            tinge[near, green] = -BLUE * LUMA[2] / LUMA[1] * part
            tinge[3 + near, red] = RED * part
            tinge[3 + near, green] = -RED * LUMA[0] / LUMA[1] * part
    return grey, tinge


def _parts(off: float) -> tuple[float, float, float]:
    """Of the neighbour before, of this one, of the one after, so far off this one's middle."""
    return max(0.0, -off), 1 - abs(off), max(0.0, off)
