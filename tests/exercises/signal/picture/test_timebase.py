import numpy as np
import pytest

from exercises.signal.lines import Lines
from exercises.signal.picture.timebase import shifted, since_switch, skew_errors

RAMP = np.tile(np.arange(1, 41, dtype=np.int16) * 16, (3, 1))


def moved(*pixels: float, period: int = 50) -> list[list[float]]:
    rows = shifted(RAMP, np.array(pixels, np.float32), period)
    return [(row / 16).tolist() for row in rows]


def test_whole_pixels_move_exactly_and_blanking_comes_in() -> None:
    line = [float(column) for column in range(1, 41)]
    right, left, still = moved(3, -5, 0)

    assert right == [0] * 3 + line[:-3]
    assert left == [*line[5:], *[0] * 5]
    assert still == line


def test_parts_of_a_pixel_move_to_a_sixteenth() -> None:
    row = moved(0.5, 0.25, -0.125)

    assert row[0][10] == 10.5
    assert row[1][10] == 10.75
    assert row[2][10] == 11.125


def test_what_leaves_comes_back_after_the_blanking() -> None:
    row = moved(45, -48, 12)

    assert row[0][:5] == [6, 7, 8, 9, 10]
    assert row[1][:4] == [0, 0, 1, 2]
    assert row[2][:14] == [39, 40] + [0] * 10 + [1, 2]


@pytest.mark.parametrize("lines", Lines)
def test_lines_are_counted_from_the_switch_through_the_blanking(lines: Lines) -> None:
    height = lines.rows
    since = since_switch(lines, height, height)
    switch = lines.switch_row(height)

    assert (since[switch], since[switch + 2]) == (0, 1)
    assert since[0] == pytest.approx((lines.total - switch) / 2, abs=0.5)
    assert since[switch - 1] == since.max()


def test_line_hold_follows_as_a_first_order_loop() -> None:
    since = np.array([0, 30, 60, 300], np.float32)

    assert skew_errors(4.0, 30, since) == pytest.approx(4 * np.exp(-since / 30), rel=1e-5)
    assert skew_errors(4.0, None, since).tolist() == [4, 4, 4, 4]
