"""When lines arrive, and where a monitor therefore puts them.

Rows are those of the woven frame, the active ones first, then those of the blanking
between fields; a field's line is two rows.
"""

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray

from exercises.signal.arrays import Plane, Quarters
from exercises.signal.lines import Lines
from exercises.signal.picture.components import Components
from exercises.signal.picture.look import Look
from exercises.signal.picture.servo import across

Order = NDArray[np.intp]

LINE_LOCK = 0.45  # of the time that locking takes (common practice: lines before pictures)
LEAN = 14.0  # µs from one tear to the next, where there are no pulses (common practice)
WOBBLE = 0.35  # µs at most
SEEN = 0.05  # pixels; less than that moves nothing


def since_switch(lines: Lines, rows: int, height: int) -> Plane:
    """Lines of a field since the heads changed over, for the first ``rows`` of a raster.

    ``height`` is how many rows are active.
    """
    per_line = 2 * height / lines.rows
    whole = raster_rows(lines, height)
    after = (np.arange(rows, dtype=np.float32) - lines.switch_row(height)) % whole
    return after / np.float32(per_line)


def skew_errors(skew: float, hold: float | None, since: Plane) -> Plane:
    """µs that lines come late: a step at the switch, and a line hold that follows it.

    err(n) = skew × e^(-n/hold): a first-order loop. Without a hold it stays.
    """
    if hold is None:
        return np.full_like(since, skew)
    late: Plane = np.float32(skew) * np.exp(since * np.float32(-1 / hold))
    return late


def errors(look: Look, rows: int, height: int) -> Plane:
    """µs that each row comes late."""
    since = since_switch(look.lines, rows, height)
    late = skew_errors(look.skew, look.hold, since)
    if look.adrift is not None:
        late = late + tear(look.adrift, since * np.float32(2 / look.lines.rows))
    elif look.settling is not None:
        late = late + shear(look.settling, since)
    return late


def tear(adrift: float, along: Plane) -> Plane:
    """µs where no pulses are, by how far along a field: lines lean, and tear where the heads
    lose their tracks, since line sync is lost there and found again late.
    """
    leaning: Plane = np.float32(LEAN) * ((across(adrift, along) - 1) / 2 % 1)
    return leaning


def shear(settling: float, since: Plane) -> Plane:
    """µs while the machine locks: the line frequency is off, so that each line comes later.

    Line lock comes at once, when the heads' speed is near enough; then the top still hooks.
    """
    if settling < LINE_LOCK:
        leaning: Plane = np.float32(0.45 - 0.03 * settling) * since
        return leaning
    left = (1 - settling) / (1 - LINE_LOCK)
    hook: Plane = np.float32(16 * left) * np.exp(since / np.float32(-45))
    return hook


def low(look: Look) -> float:
    """How far the picture stands too low, in whole pictures; adrift, it slides on and on."""
    return roll(look.settling) if look.adrift is None else look.adrift


def roll(settling: float | None) -> float:
    """How far the picture stands too low while the machine locks, in whole pictures.

    Torn, it hangs halfway; then it comes from near by. What rolled through the picture
    again and again would flash.
    """
    if settling is None:
        return 0.0
    if settling < LINE_LOCK:
        return 0.53 - 0.03 * settling / LINE_LOCK
    left = max(0.0, 1 - (settling - LINE_LOCK) / (0.85 - LINE_LOCK))
    return float(0.15 * left**1.3)


def jitter(lost: Plane, n: int) -> Plane:
    """µs: where the signal is weak, line sync is found early or late."""
    row = np.arange(lost.size, dtype=np.float32)
    wobble: Plane = np.sin(row * 2.399 + n * 1.7) * np.sin(row * 0.731 + n)
    return WOBBLE * lost * wobble


def put(parts: Components, late: Plane, lines: Lines, order: Order | None = None) -> None:
    """Move each row by its error; ``order`` says which row of the raster comes where."""
    columns = parts.luma.shape[1]
    pixels = late * np.float32(lines.pixels(1, columns))
    if order is None and not (np.abs(pixels) > SEEN).any():
        return
    period = round(lines.pixels(lines.line, columns))
    parts.luma[:] = shifted(parts.luma, pixels, period, order)
    pairs = None if order is None else order[::2] // 2
    moved = pixels[::2] / parts.share
    parts.colour[:] = shifted(parts.colour, moved, round(period / parts.share), pairs)


def rolled(look: Look, rows: int) -> Order | None:
    """Which rows of the raster are in view: moved down, the blanking between fields as well."""
    if look.settling is None and look.adrift is None:
        return None
    whole = raster_rows(look.lines, rows)
    return (np.arange(rows) - 2 * round(low(look) * whole / 2)) % whole


def raster_rows(lines: Lines, rows: int) -> int:
    """Rows of the active picture and of the blanking between fields, an even number."""
    return 2 * round(lines.total * rows / lines.rows / 2)


def shifted(plane: Quarters, pixels: Plane, period: int, order: Order | None = None) -> Quarters:
    """Rows moved right by so many pixels each, to a sixteenth; what leaves comes back.

    Between the end of a line and the start of the next lies blanking, up to ``period``.
    ``plane`` is rows × columns, or several of them that are moved alike.
    """
    rows, columns = plane.shape[-2:]
    wide, start = _widened(plane, pixels, period)
    which = np.arange(rows) if order is None else order
    if order is not None:
        start = start[order]
    whole = np.floor(start).astype(np.intp)
    taken = sliding_window_view(wide, columns + 1, axis=-1)[..., which, whole, :]
    moved: Quarters = taken[..., 1:] - taken[..., :-1]
    moved *= np.rint(16 * (start - whole)).astype(np.int16)[:, None]
    moved >>= 4
    moved += taken[..., :-1]
    return moved


def _widened(plane: Quarters, pixels: Plane, period: int) -> tuple[Quarters, Plane]:
    """Rows with room on both sides, blank ones after them, and where each moved row starts."""
    rows, columns = plane.shape[-2:]
    room = int(np.abs(pixels).max()) + 2
    if room <= period - columns:
        wide = np.empty((*plane.shape[:-2], pixels.size, columns + 2 * room), np.int16)
        wide[..., :room] = wide[..., -room:] = 0
        wide[..., :rows, room : room + columns] = plane
        start = room - pixels
    else:
        wide = np.empty((*plane.shape[:-2], pixels.size, period + columns + 1), np.int16)
        wide[..., columns:period] = wide[..., -1:] = 0
        wide[..., :rows, :columns] = plane
        wide[..., :rows, period : period + columns] = plane
        start = np.minimum((-pixels) % period, np.float32(period - 0.001))
    wide[..., rows:, :] = 0
    return wide, start
