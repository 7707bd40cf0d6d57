from io import BytesIO

import numpy as np
import pytest
from PIL import Image

from exercises.signal.arrays import Picture
from exercises.signal.footage import frame
from exercises.signal.motion import clip
from exercises.tape import Rate


def pictures(count: int) -> list[Picture]:
    return [frame("turning", 12 * n, (320, 240)) for n in range(count)]


@pytest.mark.parametrize(("rate", "milliseconds"), [(Rate.R29_97, 1001), (Rate.R25, 1200)])
def test_clip_is_read_by_pillow_frame_by_frame(rate: Rate, milliseconds: int) -> None:
    frames = pictures(30)
    image = Image.open(BytesIO(clip(frames, rate)))
    took = 0
    for number, shown in enumerate(frames):
        image.seek(number)
        error = np.asarray(image.convert("RGB")).astype(int) - shown
        took += image.info["duration"]

        assert np.abs(error).mean() < 6

    assert (image.format, image.size, image.tell()) == ("WEBP", (320, 240), 29)
    with pytest.raises(EOFError):
        image.seek(30)
    assert took == milliseconds


def test_clip_plays_once() -> None:
    assert Image.open(BytesIO(clip(pictures(2), Rate.R25))).info["loop"] == 1


def test_clip_says_how_long_it_is() -> None:
    data = clip(pictures(3), Rate.R25)

    assert int.from_bytes(data[4:8], "little") == len(data) - 8


def test_clip_of_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="A clip needs at least one frame"):
        clip([], Rate.R25)


def test_frames_of_two_sizes_are_refused() -> None:
    with pytest.raises(ValueError, match="The frames of a clip must be of one size"):
        clip([frame("grid", 0, (320, 240)), frame("grid", 0)], Rate.R25)
