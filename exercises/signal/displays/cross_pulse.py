"""The cross-pulse display: half a line and half a field shifted, blanking lifted into view.

Line and field blanking cross in the middle of the screen, so that sync, burst and the lines
where the heads change over can be looked at.
"""

import numpy as np

from exercises.signal.arrays import Picture, Plane, Quarters
from exercises.signal.displays.raster import Raster, raster
from exercises.signal.lines import Lines
from exercises.signal.picture import Look
from exercises.signal.picture.components import QUARTER, Components, picture_of
from exercises.signal.picture.rendering import played
from exercises.signal.picture.timebase import errors, shifted

DIMMED = 225.0  # what white is shown as
TINGE = -46.0  # of the blue difference, where burst is


def cross_pulse(picture: Picture, look: Look, n: int) -> Picture:
    parts = played(picture, look, n)
    if look.blank:
        return picture_of(parts)
    whole = raster(parts, look.lines)
    rows, columns = parts.luma.shape
    late = errors(look, whole.level.shape[0], rows) * look.lines.pixels(1, columns)
    return picture_of(_in_view(_lifted(whole, look.lines, late), (rows, columns)))


def _lifted(whole: Raster, lines: Lines, late: Plane) -> Components:
    """Sync at black, blanking dark grey; each row where it arrives."""
    rows, columns = whole.level.shape
    share = columns // whole.colour.shape[2]
    shade = (whole.level - lines.sync_tip) * (DIMMED * QUARTER / (100 - lines.sync_tip))
    colour = whole.colour.copy()
    colour[0] += TINGE * whole.burst.reshape(rows // 2, 2, -1, share).mean(axis=(1, 3))
    return Components(
        shifted(_rounded(shade), late, columns),
        shifted(_rounded(QUARTER * colour), late[::2] / share, columns // share),
    )


def _rounded(plane: Plane) -> Quarters:
    return np.rint(plane).astype(np.int16)


def _in_view(parts: Components, shape: tuple[int, int]) -> Components:
    """Half a line and half a field on, as much as the screen holds."""
    rows, columns = parts.luma.shape
    share = parts.share
    down, across = rows // 4 * 2, columns // 2 // share * share
    row = (np.arange(shape[0]) + down) % rows
    column = (np.arange(shape[1]) + across) % columns
    luma = parts.luma[row[:, None], column]
    colour = parts.colour[:, row[::2, None] // 2, column[::share] // share]
    return Components(luma, colour)
