"""Skew, measured in what is shown by scikit-image's phase correlation.

A step is strain × field time: tape that is longer by a ten-thousandth is 1.67 µs late at
525 lines and 2 µs at 625 (arithmetic on SMPTE 170M's and ITU-R BT.1700's field times).
"""

import numpy as np
import pytest
from skimage.registration import phase_cross_correlation

from exercises.signal.arrays import Picture, Plane
from exercises.signal.lines import Lines
from exercises.signal.patterns.bars import LUMA
from exercises.signal.picture import Look, rendered
from exercises.signal.scenes.texture import clouded

FIELD = {Lines.L525: 1 / (60000 / 1001), Lines.L625: 1 / 50}  # s
ACTIVE = {Lines.L525: 52.66, Lines.L625: 52.0}  # µs
STRAINS = (5e-5, 1e-4, 3e-4, -1e-4, -2.5e-4)
FIELDS = 2  # woven into a frame: every second row is the next line of a field
APART = 16  # rows between bands that are measured
ENOUGH = 1.0  # pixel: less can't be told from the error of measuring


def textured(lines: Lines) -> Picture:
    """A picture with detail everywhere: nothing else can be correlated to a tenth of a pixel."""
    shade = 128 + 150 * clouded(lines.size, 90, 70, seed=5, octaves=2)
    return np.repeat(np.clip(shade, 0, 255).astype(np.uint8)[..., None], 3, axis=2)


def luma(picture: Picture, rows: slice, by: int) -> Plane:
    """Of the middle and ``by`` columns on, under a window that softens the sides."""
    quarter = picture.shape[1] // 4
    part: Plane = picture[rows, quarter + by : 3 * quarter + by] @ np.array(LUMA)
    softened: Plane = (part - part.mean()) * np.hanning(part.shape[1])
    return softened


def moved(clean: Picture, spoiled: Picture, rows: slice) -> float:
    """Pixels to the right: whole ones first, so that both windows then hold the same."""
    whole = 0
    for _ in range(2):
        shift, _, _ = phase_cross_correlation(
            luma(clean, rows, 0),
            luma(spoiled, rows, whole),
            upsample_factor=100,
            normalization=None,
        )
        found = whole - float(shift[1])
        whole = round(found)
    return found


@pytest.mark.parametrize("lines", Lines)
@pytest.mark.parametrize("strain", STRAINS)
def test_step_after_the_switch_is_strain_by_field_time(lines: Lines, strain: float) -> None:
    """scikit-image's phase correlation; derived here: strain × field time of SMPTE 170M and
    ITU-R BT.1700.
    """
    microseconds = strain * FIELD[lines] * 1e6
    width, height = lines.size
    clean = textured(lines)
    late = rendered(clean, Look(lines=lines, skew=microseconds, hold=None), 0)

    after = slice(lines.switch_row(height), height)
    assert moved(clean, late, after) == pytest.approx(microseconds * width / ACTIVE[lines], abs=0.1)


@pytest.mark.parametrize("lines", Lines)
@pytest.mark.parametrize("hold", [20, 30])
def test_line_hold_brings_the_top_back_by_a_first_order_loop(lines: Lines, hold: int) -> None:
    """scikit-image's phase correlation; derived here: a loop of first order leaves 1/e of the
    error after as many lines as its hold, so bands the same way apart are in one proportion.
    """
    clean = textured(lines)
    late = rendered(clean, Look(lines=lines, skew=2.5, hold=hold), 0)

    bands = [slice(top, top + 8) for top in range(0, lines.size[1] // 2 + 1, APART)]
    found = [moved(clean, late, band) for band in bands]

    kept = np.exp(-APART / FIELDS / hold)
    seen = [each for each in found if each > ENOUGH]
    assert len(seen) >= 4
    assert seen[1:] == pytest.approx([kept * each for each in seen[:-1]], rel=0.05)
    assert abs(found[-1]) < 0.25


@pytest.mark.parametrize("lines", Lines)
def test_picture_before_the_switch_stays_where_it_is(lines: Lines) -> None:
    """scikit-image's phase correlation."""
    clean = textured(lines)
    height = lines.size[1]
    late = rendered(clean, Look(lines=lines, skew=2.0), 0)

    before = slice(height - 60, lines.switch_row(height))
    assert moved(clean, late, before) == pytest.approx(0, abs=0.05)


@pytest.mark.parametrize("lines", Lines)
def test_switch_lies_within_nine_rows_of_the_bottom(lines: Lines) -> None:
    """Six and a half lines (from memory, IEC 60774-1) to seven (common practice) before field
    sync, active picture ending 2.5 to 3 before it (SMPTE 170M): 7 to 9 rows of the woven
    frame.
    """
    height = lines.size[1]

    assert 7 <= height - lines.switch_row(height) <= 9
