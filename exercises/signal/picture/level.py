"""Picture level: gain about blanking, pedestal, and the recorder's clipping."""

from dataclasses import replace

import numpy as np

from exercises.signal.arrays import Picture
from exercises.signal.lines import Lines
from exercises.signal.picture.components import QUARTER, Components, components
from exercises.signal.picture.look import Look

CEILING = 110.0  # IRE that a recorder clips at (common practice)
FLOOR = 0.0  # and at blanking
WHITE = 255 * QUARTER
LOUDEST = 30.0  # dB: a white times that fits 16 bits
SATURATED = 640  # quarters of a colour difference that a recorder takes (common practice)


def factor(decibels: float) -> float:
    """From ``LOUDEST`` on all that is not black is as white as can be."""
    return float(10 ** (min(decibels, LOUDEST) / 20))


def levelled(picture: Picture, look: Look) -> Components:
    """The source's own level, clipped as it was recorded, then the gain, clipped again.

    A source whose white is not over the ceiling loses nothing, so that once is enough.
    """
    source, gain = look.source / 100, factor(look.gain)
    if look.source <= CEILING:
        return _amplified(picture, look, source * gain)
    parts = _amplified(picture, replace(look, pedestal=0), source)
    again = parts.luma * gain + _offset(look, gain)
    parts.luma[:] = np.clip(again, *_bounds(look.lines))
    parts.colour[:] = np.clip(parts.colour * gain, -SATURATED, SATURATED)
    return parts


def _amplified(picture: Picture, look: Look, gain: float) -> Components:
    parts = components(picture, gain)
    if gain != 1 or look.pedestal:
        luma = parts.luma
        luma += np.int16(round(_offset(look, gain)))
        np.clip(luma, *_bounds(look.lines), out=luma)
        np.clip(parts.colour, -SATURATED, SATURATED, out=parts.colour)
    return parts


def _offset(look: Look, gain: float) -> float:
    """What a gain about blanking and the pedestal add to black, which stands over blanking."""
    setup = look.lines.setup
    return ((gain - 1) * setup + look.pedestal) * WHITE / (100 - setup)


def _bounds(lines: Lines) -> tuple[int, int]:
    return round(WHITE * lines.shade(FLOOR)), round(WHITE * lines.shade(CEILING))
