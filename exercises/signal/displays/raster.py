"""A whole frame of the signal: active lines, blanking, sync and burst.

Columns begin with the active line; its blanking follows. Rows begin with the active ones of
the woven frame; those between the fields follow.
"""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from exercises.signal.arrays import Mask, Plane, Size
from exercises.signal.lines import Lines
from exercises.signal.picture.components import QUARTER, Components
from exercises.signal.picture.timebase import raster_rows

NARROW = 2.3  # µs, an equalising pulse (SMPTE 170M)
WHITE = 255 * QUARTER


@dataclass(frozen=True, slots=True)
class Raster:
    """level: IRE over blanking; burst: where colour burst lies, 0 or 1; colour: as Components."""

    level: Plane
    burst: Plane
    colour: Plane


def raster(parts: Components, lines: Lines) -> Raster:
    rows, columns = parts.luma.shape
    frame, burst = blanked(lines, (columns, rows))
    level = frame.copy()
    level[:rows, :columns] = lines.setup + parts.luma * ((100 - lines.setup) / WHITE)
    half, share = frame.shape[0] // 2, parts.share
    colour = np.zeros((2, half, frame.shape[1] // share), np.float32)
    colour[:, : rows // 2, : columns // share] = parts.colour / np.float32(QUARTER)
    return Raster(level, burst, colour)


@lru_cache(maxsize=4)
def blanked(lines: Lines, size: Size) -> tuple[Plane, Plane]:
    """The level of a frame without a picture, and where the burst is."""
    columns, rows = size
    frame = np.zeros((raster_rows(lines, rows), line_columns(lines, columns)), np.float32)
    burst = np.zeros_like(frame)
    since = np.arange(frame.shape[1]) - columns - lines.pixels(lines.front_porch, columns)
    since = since * lines.active / columns % lines.line  # µs since line sync began
    for row in range(frame.shape[0]):
        low, coloured = _line(lines, since, _half(lines, row, rows))
        frame[row, low] = lines.sync_tip
        burst[row, coloured] = 1
    return frame, burst


def line_columns(lines: Lines, columns: int) -> int:
    """Columns of a whole line, a multiple of eight."""
    return 8 * round(lines.pixels(lines.line, columns) / 8)


def _half(lines: Lines, row: int, rows: int) -> int:
    """How many half lines the middle of a row comes after field sync's first equalising pulse.

    That one is in the blanking at the end of the last active row; the second field's is half
    a line later.
    """
    line = (row - rows) * lines.rows // rows // 2
    return 2 * line + 1 - row % 2


def _line(lines: Lines, since: Plane, half: int) -> tuple[Mask, Mask]:
    """Where a row is at sync level, and where it has burst.

    It shows the rest of a line that began in the row before, and the start of the next.
    """
    began = _pulse(lines, half - 1, otherwise=lines.sync)
    inside = _pulse(lines, half, otherwise=0.0)
    ending = _pulse(lines, half + 1, otherwise=lines.sync)
    middle = lines.line / 2
    starts = np.arange(since.size) >= np.argmin(since)
    low = since < np.where(starts, ending, began)
    low |= ~starts & (since >= middle) & (since < middle + inside)
    coloured = (since >= lines.burst_start) & (since < lines.burst_start + lines.burst)
    return low, coloured & (ending == lines.sync)


def _pulse(lines: Lines, half: int, *, otherwise: float) -> float:
    """µs at sync level from the start of a half line on; ``otherwise`` outside field sync."""
    if 0 <= half < 3 * lines.pulses:
        broad = half // lines.pulses == 1
        return lines.line / 2 - lines.sync if broad else NARROW
    return otherwise
