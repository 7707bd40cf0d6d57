import numpy as np
import pytest

from exercises.signal.arrays import Picture
from exercises.signal.footage import frame
from exercises.signal.patterns import BARS
from exercises.signal.picture.components import components, picture_of


def flat(*colour: int, size: tuple[int, int] = (640, 480)) -> Picture:
    return np.full((size[1], size[0], 3), colour, np.uint8)


@pytest.mark.parametrize("size", [(640, 480), (320, 240), (768, 576), (1280, 960), (360, 250)])
def test_colours_come_back_as_they_were(size: tuple[int, int]) -> None:
    for colour in ((0, 0, 0), (255, 255, 255), (200, 40, 90), (12, 190, 250)):
        back = picture_of(components(flat(*colour, size=size))).astype(int)

        assert np.abs(back - np.array(colour)).max() <= 1


def test_luma_keeps_all_its_detail() -> None:
    clean = frame("turning", 10)
    luma = components(clean).luma / 4

    assert np.abs(luma - clean @ np.array([0.299, 0.587, 0.114])).max() <= 0.3


def test_differences_of_bars_are_those_of_their_triples() -> None:
    """Cb and Cr of ITU-R BT.601 run from 16 to 240 where ours run from -512 to 512."""
    colour = components(frame("bars", 0)).colour[:, 120, 5::10]
    codes = 128 + colour * (224 / 1020)

    assert np.abs(codes.T - np.array([bar.triple[1:] for bar in BARS["bars"]])).max() < 0.8


def test_gain_works_on_luma_and_colour_alike() -> None:
    once, twice = components(flat(100, 60, 30)), components(flat(100, 60, 30), 2.0)

    assert np.abs(twice.luma - 2 * once.luma).max() <= 2
    assert np.abs(twice.colour - 2 * once.colour).max() <= 2


@pytest.mark.parametrize(
    ("size", "problem"),
    [
        ((322, 240), "The width of a picture must be a multiple of 4, not 322."),
        ((636, 480), "The width of a picture must be a multiple of 8, not 636."),
        ((640, 481), "The height of a picture must be even, not 481."),
    ],
)
def test_sizes_that_cannot_be_taken_apart_are_refused(size: tuple[int, int], problem: str) -> None:
    with pytest.raises(ValueError, match=problem):
        components(flat(0, 0, 0, size=size))
