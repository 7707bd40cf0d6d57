"""From a clean picture and a look to what a monitor shows."""

import numpy as np

from exercises.signal.arrays import Picture, Plane
from exercises.signal.picture import servo
from exercises.signal.picture.components import Components, picture_of
from exercises.signal.picture.detail import soften
from exercises.signal.picture.dropouts import drop_out
from exercises.signal.picture.envelope import HELD, heads_signal, lose_carrier
from exercises.signal.picture.level import levelled
from exercises.signal.picture.look import CLEAN, Look
from exercises.signal.picture.noise import add_noise
from exercises.signal.picture.snow import snow
from exercises.signal.picture.timebase import errors, jitter, put, raster_rows, rolled


def rendered(picture: Picture, look: Look, n: int) -> Picture:
    """The picture as a monitor shows it, edge to edge.

    n  the frame's number: noise is never alike in two frames, and always alike in one
    """
    if look == CLEAN:
        return picture
    return picture_of(shown(played(picture, look, n), look, n))


def played(picture: Picture, look: Look, n: int) -> Components:
    """What comes from the heads, line by line."""
    if look.blank:
        return snow(picture.shape[:2], n)
    parts = levelled(picture, look)
    soften(parts, look)
    seen = signal(look, parts.luma.shape[0])
    add_noise(parts, look, n, seen)
    if seen is not None:
        lose_carrier(parts, seen, n)
    if look.dropouts:
        drop_out(parts, look, n)
    parts.limit()
    return parts


def signal(look: Look, rows: int) -> Plane | None:
    """How much the heads see of their tracks, by rows; None where they see them whole."""
    tracked = heads_signal(look, rows) if look.tracking or look.dirt else None
    slid = unlocked(look, rows)
    if tracked is None or slid is None:
        return slid if tracked is None else tracked
    return np.minimum(tracked, slid)


def unlocked(look: Look, rows: int) -> Plane | None:
    """What a machine that isn't locked sees of its tracks; None where it is."""
    if look.adrift is not None:
        return servo.drifting(look.adrift, rows)
    return None if look.settling is None else servo.seen(look.settling, rows)


def shown(parts: Components, look: Look, n: int) -> Components:
    """Put on the screen by a monitor that takes its time from the signal's own sync."""
    rows = parts.luma.shape[0]
    order = rolled(look, rows)
    late = errors(look, rows if order is None else raster_rows(look.lines, rows), rows)
    seen = signal(look, rows)
    if seen is not None:
        late[:rows] += jitter(np.clip(1 - seen / HELD, 0, 1), n)
    put(parts, late, look.lines, order)
    return parts
