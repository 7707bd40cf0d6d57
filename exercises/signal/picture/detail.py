"""Detail: what is left of it after copies, and where the colour has slipped to."""

import numpy as np

from exercises.signal.arrays import Quarters
from exercises.signal.picture.components import Components
from exercises.signal.picture.look import Look
from exercises.tape.noise import gaussian_bandwidth

LUMA_BAND = 3.0  # MHz of one recording (published for 12.65 mm cassettes: 240 lines)
COLOUR_BAND = 0.5  # MHz, colour under luma (common practice)
COLOUR_DELAY = 0.10  # µs later with each copy (common practice)
FIT = 4  # sums of a level up to 1132 quarters fit 16 bits before they must be halved
COLOUR_DROP = 1  # lines of a field lower with each copy (common practice)


def soften(parts: Components, look: Look) -> None:
    """Each copy narrows luma and colour; the colour comes later and lower with each."""
    if not look.copies:
        return
    width, share = parts.luma.shape[1], parts.share
    band = gaussian_bandwidth(look.copies)
    _blur(parts.luma, passes(look.lines.pixels(spread(LUMA_BAND * band), width)))
    count = passes(look.lines.pixels(spread(COLOUR_BAND * band), width) / share)
    late = look.lines.pixels(COLOUR_DELAY * (look.copies - 1), width) / share + (count % 2) / 2
    low = round(COLOUR_DROP * (look.copies - 1) * parts.luma.shape[0] / look.lines.rows)
    _blur(parts.colour, count)
    _slip(parts.colour, late, low)


def spread(band: float) -> float:
    """Standard deviation in µs of a Gaussian response that is 3 dB down at so many MHz.

    >>> round(spread(3.0), 4)
    0.0442
    """
    return 0.13251 / band


def passes(deviation: float) -> int:
    """A Gaussian as so many means of two neighbours: each adds a quarter column² of variance.

    >>> passes(1.0)
    4
    """
    return round(4 * deviation**2)


def _blur(plane: Quarters, count: int) -> None:
    """Along the lines. A mean with the neighbour but one does for four with the next.

    An odd number of passes leaves the picture half a column to the left.
    """
    steps = _steps(count)
    old, new = plane, np.empty_like(plane)
    for first in range(0, len(steps), FIT):
        turn = steps[first : first + FIT]
        for step in turn:
            _sum(old, new, step)
            old, new = new, old
        old += np.int16(2 ** len(turn) // 2)
        old >>= len(turn)
    if old is not plane:
        plane[:] = old


def _steps(count: int) -> list[int]:
    """To which neighbours, so that the picture stays where it is or half a column before."""
    steps: list[int] = []
    for step in _sizes(count):
        steps.append(-step if sum(steps) > 0 else step)
    return steps


def _sizes(count: int) -> list[int]:
    """Few means with far neighbours for many with near ones: twice as far is worth four.

    Of each distance there is one at least, and of the near ones two, so that none rings.
    """
    sizes = []
    for step in (8, 4, 2):
        while count > 1.25 * step * step:
            sizes.append(step)
            count -= step * step
    return sizes + [1] * count


def _sum(old: Quarters, new: Quarters, step: int) -> None:
    """Of each column and the one ``step`` after it; at the end, what has no such one twice."""
    if step > 0:
        np.add(old[..., step:], old[..., :-step], out=new[..., :-step])
        np.left_shift(old[..., -step:], 1, out=new[..., -step:])
    else:
        np.add(old[..., -step:], old[..., :step], out=new[..., -step:])
        np.left_shift(old[..., :-step], 1, out=new[..., :-step])


def _slip(colour: Quarters, late: float, low: int) -> None:
    """Move colour right by a fraction of columns, or more, and down by whole rows."""
    if low:
        colour[:, low:] = colour[:, :-low].copy()
    steps, part = int(late), round(16 * (late % 1))
    if steps:
        colour[..., steps:] = colour[..., :-steps].copy()
    if part:
        before = colour[..., :-1] - colour[..., 1:]
        before *= np.int16(part)
        before >>= 4
        colour[..., 1:] += before
