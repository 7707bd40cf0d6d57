import numpy as np
import pytest

from exercises.signal.displays import DISPLAYS, cross_pulse, monitor, underscan, waveform
from exercises.signal.displays.waveform import BOTTOM, LEFT, RIGHT, TOP, height
from exercises.signal.footage import frame
from exercises.signal.lines import Lines
from exercises.signal.patterns import BARS
from exercises.signal.picture import Look

PLAIN = Look(copies=1, snr=50)


@pytest.mark.parametrize("size", [(320, 240), (384, 288)])
@pytest.mark.parametrize("display", DISPLAYS)
def test_display_is_as_large_as_the_picture(display: str, size: tuple[int, int]) -> None:
    for look in (PLAIN, Look(blank=True), Look(settling=0.3), Look(skew=-200)):
        shown = DISPLAYS[display](frame("tools", 9, size), look, 1)

        assert shown.shape == (size[1], size[0], 3)


def test_monitor_hides_the_lines_after_the_switch_and_underscan_shows_them() -> None:
    clean = frame("grid", 0)
    clean[468:] = (255, 0, 0)

    def red(shown: np.ndarray[tuple[int, ...], np.dtype[np.uint8]]) -> bool:
        return bool((shown[..., 0].astype(int) - shown[..., 1] > 120).any())

    assert not red(monitor(clean, Look(), 0))
    assert red(underscan(clean, Look(), 0))


def black_columns(look: Look, row: int) -> tuple[int, int]:
    """Where line sync starts and ends in a row of the cross-pulse display."""
    shown = cross_pulse(np.full((480, 640, 3), 128, np.uint8), look, 0)
    dark = np.flatnonzero(shown[row].astype(int).sum(axis=1) < 30)
    return int(dark[0]), int(dark[-1])


def test_line_sync_runs_straight_through_the_middle() -> None:
    first, last = black_columns(Look(), 40)

    assert first == pytest.approx(320 - Lines.L525.pixels(10.9 / 2 - 1.5, 640), abs=4)
    assert last - first + 1 == pytest.approx(Lines.L525.pixels(4.7, 640), abs=1)
    assert black_columns(Look(), 430) == (first, last)


def test_skew_bends_line_sync_after_the_field_blanking_and_not_before() -> None:
    straight = black_columns(Look(), 40)
    look = Look(skew=4)

    assert black_columns(look, 40)[0] == pytest.approx(straight[0], abs=1)
    bent = [black_columns(look, row)[0] - straight[0] for row in (265, 320, 440)]
    assert bent == sorted(bent, reverse=True)
    assert bent[0] > 12
    assert bent[2] <= 2


@pytest.mark.parametrize("name", BARS)
@pytest.mark.parametrize("lines", Lines)
def test_bars_stand_at_their_levels_on_the_waveform_display(lines: Lines, name: str) -> None:
    clean, bars = frame(name, 0, lines.size), BARS[name]
    shown = waveform(clean, Look(lines=lines), 0)
    scale = lines.size[0] / 640
    blanking = 1 - lines.active / lines.line
    for number, bar in enumerate(bars[:-1]):
        part = blanking + (1 - blanking) * (number + 0.5) / len(bars)
        column = round((LEFT + (RIGHT - LEFT) * part) * scale)
        bright = np.flatnonzero(shown[:, column, 1] > 180) / scale

        assert bright.mean() == pytest.approx(height(bar.ire(lines), lines), abs=1.5)


@pytest.mark.parametrize("lines", Lines)
def test_scale_reaches_from_sync_to_beyond_clipping(lines: Lines) -> None:
    assert TOP < height(110, lines) < height(100, lines) < height(0, lines)
    assert height(0, lines) < height(lines.sync_tip, lines) < BOTTOM


@pytest.mark.parametrize(("name", "white"), [("dim-monitor", 135), ("bright-monitor", 254)])
def test_monitor_with_its_contrast_turned_shows_another_white(name: str, white: int) -> None:
    """Three quarters of a white, 191 of 255, by -3 and +2.5 dB."""
    shown = DISPLAYS[name](frame("bars", 0), Look(), 0)

    assert shown[240, 20].tolist() == pytest.approx([white] * 3, abs=2)
