from io import BytesIO

import numpy as np
import pytest
from PIL import Image

from exercises.signal.footage import frame
from exercises.signal.motion import jpeg, strip


def test_strip_holds_each_picture_in_its_place() -> None:
    frames = [frame("leader", 30 * n, (320, 240)) for n in range(7)]
    made = strip(frames, 7, across=3)
    sheet = np.asarray(Image.open(BytesIO(made.jpeg)))

    assert sheet.shape == (720, 960, 3)
    for number, shown in enumerate(frames):
        left, top = made.place(number)
        part = sheet[top : top + 240, left : left + 320].astype(int)
        assert np.abs(part - shown).mean() < 2


def test_strip_of_another_number_of_frames_is_refused() -> None:
    frames = [frame("grid", 0, (320, 240))] * 2
    with pytest.raises(ValueError, match="The strip needs 3 frames and got 2"):
        strip(frames, 3)


def test_place_of_a_picture_that_is_not_there_is_refused() -> None:
    made = strip([frame("grid", 0, (320, 240))], 1)
    with pytest.raises(IndexError):
        made.place(1)


def test_still_picture_carries_nothing_but_the_picture() -> None:
    image = Image.open(BytesIO(jpeg(frame("tools", 0))))

    assert set(image.info) == {"jfif", "jfif_version", "jfif_unit", "jfif_density"}
    assert not image.getexif()
