"""Sync and burst against SMPTE 170M and ITU-R BT.1700."""

import numpy as np
import pytest

from exercises.signal.displays.raster import blanked, line_columns
from exercises.signal.lines import Lines


@pytest.mark.parametrize("lines", Lines)
def test_line_sync_and_burst_have_their_time_and_place(lines: Lines) -> None:
    level, burst = blanked(lines, lines.size)
    columns = lines.size[0]
    microsecond = columns / lines.active
    low, coloured = np.flatnonzero(level[100] < 0), np.flatnonzero(burst[100])

    assert low.size / microsecond == pytest.approx(4.7, abs=0.1)
    assert (low[0] - columns) / microsecond == pytest.approx(lines.front_porch, abs=0.1)
    assert (coloured[0] - low[0]) / microsecond == pytest.approx(lines.burst_start, abs=0.1)
    assert level.shape[1] / microsecond == pytest.approx(lines.line, abs=0.4)


@pytest.mark.parametrize("lines", Lines)
@pytest.mark.parametrize("field", [0, 1])
def test_field_sync_is_equalising_broad_and_equalising_pulses(lines: Lines, field: int) -> None:
    """Six of each at 525 lines, five at 625, half a line apart."""
    level, burst = blanked(lines, lines.size)
    rows = lines.size[1]
    microseconds = lines.active / lines.size[0]
    row = rows - 2 + field
    from_there = level[row::2].ravel()[lines.size[0] - 60 :] < 0
    steps = np.diff(np.pad(from_there, 1).astype(int))
    long = (np.flatnonzero(steps == -1) - np.flatnonzero(steps == 1)) * microseconds
    pulses = long[field : field + 3 * lines.pulses]  # before the second field's, line sync

    assert (pulses > 20).tolist() == (
        [False] * lines.pulses + [True] * lines.pulses + [False] * lines.pulses
    )
    assert pulses[0] == pytest.approx(2.3, abs=0.1)
    assert pulses[lines.pulses] == pytest.approx(lines.line / 2 - 4.7, abs=0.4)
    assert long[field + 3 * lines.pulses :][1:-1] == pytest.approx(4.7, abs=0.1)
    assert not burst[rows : rows + 2].any()


def test_line_is_whole_groups_of_colour() -> None:
    assert [line_columns(lines, lines.size[0]) % 8 for lines in Lines] == [0, 0]
