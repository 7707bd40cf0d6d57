"""What each part of a look does to a picture."""

from dataclasses import replace

import numpy as np
import pytest

from exercises.signal.arrays import Picture, Plane
from exercises.signal.footage import frame
from exercises.signal.lines import Lines
from exercises.signal.picture import CLEAN, Look, rendered
from exercises.signal.picture.rendering import played
from exercises.tape.levels import gained

GREY = np.full((480, 640, 3), 128, np.uint8)
FAULTS = {
    "noise": Look(snr=40),
    "copies": Look(copies=5),
    "tracking": Look(tracking=70),
    "dirt": Look(dirt=18),
    "skew": Look(skew=3),
    "gain": Look(gain=2),
    "pedestal": Look(pedestal=5),
    "dropouts": Look(dropouts=9),
    "torn": Look(settling=0.2),
    "rolling": Look(settling=0.6),
    "adrift": Look(adrift=0.3),
    "snow": Look(blank=True),
    "bright source": Look(source=125),
}
DANCING = {"noise", "tracking", "dirt", "dropouts", "torn", "rolling", "adrift", "snow"}


def luma(picture: Picture) -> Plane:
    shade: Plane = picture @ np.array([0.299, 0.587, 0.114])
    return shade


def test_clean_look_leaves_the_picture_alone() -> None:
    clean = frame("tools", 5)

    assert rendered(clean, CLEAN, 3) is clean


@pytest.mark.parametrize("size", [(640, 480), (320, 240), (768, 576)])
@pytest.mark.parametrize("fault", FAULTS)
def test_fault_is_seen_and_is_the_same_each_time(fault: str, size: tuple[int, int]) -> None:
    clean = frame("turning", 20, size)
    before = clean.copy()
    shown = rendered(clean, FAULTS[fault], 7)

    assert shown.shape == clean.shape
    assert not np.array_equal(shown, rendered(clean, Look(copies=0, gain=1e-9), 7))
    assert np.array_equal(shown, rendered(clean, FAULTS[fault], 7))
    assert np.array_equal(clean, before)


@pytest.mark.parametrize("fault", FAULTS)
def test_only_what_dances_differs_from_frame_to_frame(fault: str) -> None:
    first, second = (rendered(frame("turning", 20), FAULTS[fault], n) for n in (7, 8))

    assert np.array_equal(first, second) == (fault not in DANCING)


@pytest.mark.parametrize("lines", Lines)
@pytest.mark.parametrize("gain", [-60, -25, 15])
def test_gain_is_the_tape_models_gain_over_blanking(lines: Lines, gain: int) -> None:
    """Grey of a known IRE, amplified as `exercises.tape.levels` has it."""
    shown = rendered(GREY, Look(lines=lines, gain=gain / 10), 0)

    ire = lines.level(128 / 255)
    assert luma(shown).mean() / 255 == pytest.approx(lines.shade(gained(ire, gain)), abs=0.004)


def test_white_over_the_ceiling_has_no_shape_left_and_no_gain_brings_it_back() -> None:
    ramp = np.repeat(np.linspace(0, 255, 640)[None, :, None], 480, 0).repeat(3, 2).astype(np.uint8)
    shown = luma(rendered(ramp, Look(source=140, gain=-6), 0))[0]

    assert shown[100] < shown[300] - 50
    assert np.ptp(shown[560:]) < 1
    assert shown[-1] / 255 == pytest.approx(Lines.L525.shade(gained(110, -60)), abs=0.01)


def test_pedestal_lifts_black() -> None:
    black = frame("black", 0)

    assert luma(rendered(black, Look(pedestal=9.25), 0)).mean() == pytest.approx(25.5, abs=0.5)


def test_tracking_loses_rows_in_a_band_that_widens() -> None:
    """By rows: more than 20 shades rms off the picture."""
    lost = []
    for tracking in (0, 30, 50, 60, 75, 100):
        shown = luma(rendered(GREY, Look(tracking=tracking), 3))
        lost.append(int(((shown - 128).std(axis=1) > 20).sum()))

    assert lost[:2] == [0, 0]
    assert 0 < lost[2] < lost[3] < lost[4] < lost[5]


def test_band_lies_elsewhere_on_the_other_side_of_the_track() -> None:
    rows = []
    for tracking in (60, -60):
        shown = luma(rendered(GREY, Look(tracking=tracking), 3))
        rows.append(float(np.flatnonzero((shown - 128).std(axis=1) > 20).mean()))

    assert rows[0] > 300
    assert rows[1] < 180


def test_streaks_are_mostly_white() -> None:
    off = luma(rendered(GREY, Look(tracking=54), 3)) - 128

    assert (off > 60).sum() > 2 * (off < -60).sum() > 0


def test_colour_goes_where_the_signal_does() -> None:
    red = np.full((480, 640, 3), (200, 30, 30), np.uint8)
    shown = rendered(red, Look(tracking=75), 3).astype(int)
    difference = (shown[..., 0] - shown[..., 2]).mean(axis=1)

    assert difference[330:345].mean() < 20
    assert difference[60:120].mean() > 150


def test_colour_comes_later_and_lower_with_each_copy() -> None:
    patch = np.full((480, 640, 3), 110, np.uint8)
    patch[200:280, 240:400] = (190, 70, 150)

    def middle(copies: int) -> tuple[float, float]:
        shown = rendered(patch, Look(copies=copies), 0).astype(float)
        red = np.clip(shown[..., 0] - shown[..., 1] - 10, 0, None)
        rows, columns = np.mgrid[:480, :640]
        return float((rows * red).sum() / red.sum()), float((columns * red).sum() / red.sum())

    first, fourth = middle(1), middle(4)
    assert fourth[0] - first[0] == pytest.approx(3 * 2, abs=1.2)
    assert fourth[1] - first[1] == pytest.approx(3 * Lines.L525.pixels(0.1, 640), abs=1.5)


def test_dropouts_are_as_many_as_asked_for() -> None:
    found = []
    for n in range(60):
        bright = luma(rendered(GREY, Look(dropouts=5), n)) > 220
        found.append(int((np.diff(bright.astype(int), axis=1, prepend=0) == 1).sum()))

    assert np.mean(found) == pytest.approx(5, abs=0.8)


def test_snow_has_neither_colour_nor_picture() -> None:
    snow = rendered(frame("keeper", 0), replace(CLEAN, blank=True), 1)

    assert np.ptp(snow.astype(int), axis=2).max() <= 1
    assert np.array_equal(snow, rendered(frame("tools", 9), replace(CLEAN, blank=True), 1))
    assert 50 < snow.std() < 90


def test_torn_picture_shows_blanking_across_and_slanted() -> None:
    white = np.full((480, 640, 3), 200, np.uint8)
    dark = luma(rendered(white, Look(settling=0.2), 0)) < 40

    assert dark.all(axis=1).sum() >= 30
    assert 0.1 < dark[:100].mean() < 0.35
    left = [int(np.argmax(row)) for row in dark[100:120:10]]
    assert len(set(left)) == len(left)


def test_locked_picture_stands_where_it_belongs() -> None:
    clean = frame("grid", 0)

    assert np.abs(rendered(clean, Look(settling=0.999), 0).astype(int) - clean).mean() < 1


@pytest.mark.parametrize("lines", Lines)
@pytest.mark.parametrize("tracking", [0, 55])
def test_most_that_a_document_can_ask_for_wraps_nothing_round(lines: Lines, tracking: int) -> None:
    """Signal-to-noise of 10 dB, 20 µs of skew, sixty decibels: bright stays bright."""
    grey = np.full((lines.rows, lines.size[0], 3), 128, np.uint8)
    noisy = luma(rendered(grey, Look(lines=lines, snr=10, skew=20, tracking=tracking), 1))
    burnt = luma(rendered(grey, Look(lines=lines, gain=60, skew=-20, copies=30), 1))

    assert noisy[100:200, 300:].mean() == pytest.approx(128, abs=12)
    assert burnt[200:400, :400].min() > 250
    assert rendered(grey, Look(lines=lines, source=0, gain=-60), 1).max() == 0


def test_saturated_colour_at_full_gain_stays_itself() -> None:
    blue = np.full((480, 640, 3), (0, 0, 255), np.uint8)
    shown = rendered(blue, Look(gain=60, snr=10, skew=9, copies=9), 1)[200:300].astype(int)

    assert (shown[..., 2] >= shown[..., 0]).mean() > 0.95


def test_what_the_heads_give_is_never_more_than_later_stages_can_take() -> None:
    """Differences of it times 16 must fit 16 bits."""
    white = np.full((480, 640, 3), (255, 255, 255), np.uint8)
    parts = played(white, Look(gain=60, snr=10, tracking=58, dropouts=9), 1)

    assert 16 * (int(parts.luma.max()) - int(parts.luma.min())) < 2**15
    assert 16 * (int(parts.colour.max()) - int(parts.colour.min())) < 2**15
