"""Pictures side by side in one JPEG, to be stepped through or turned through by a control."""

from collections.abc import Iterable
from dataclasses import dataclass
from io import BytesIO

import numpy as np
from PIL import Image

from exercises.signal.arrays import Picture, Size

QUALITY = 85


@dataclass(frozen=True, slots=True)
class Strip:
    """``jpeg`` holds ``count`` pictures of one size, ``across`` in a row, read as text is."""

    jpeg: bytes
    count: int
    across: int
    size: Size

    def place(self, number: int) -> tuple[int, int]:
        """Pixels from the left and from the top of picture ``number``, from 0 on.

        >>> Strip(b"", 41, 8, (320, 240)).place(9)
        (320, 240)
        """
        if not 0 <= number < self.count:
            raise IndexError(f"The strip has no picture {number}.")
        return number % self.across * self.size[0], number // self.across * self.size[1]


def strip(frames: Iterable[Picture], count: int, *, across: int = 8) -> Strip:
    """``count`` frames; sizes that are multiples of 16 keep neighbours from touching."""
    sheet: Picture | None = None
    size: Size = (0, 0)
    number = -1
    for number, frame in enumerate(frames):
        if sheet is None:
            size = frame.shape[1], frame.shape[0]
            sheet = np.zeros((-(-count // across) * size[1], across * size[0], 3), np.uint8)
        left, top = number % across * size[0], number // across * size[1]
        sheet[top : top + size[1], left : left + size[0]] = frame
    if sheet is None or number + 1 != count:
        raise ValueError(f"The strip needs {count} frames and got {number + 1}.")
    return Strip(jpeg(sheet), count, across, size)


def jpeg(picture: Picture, quality: int = QUALITY) -> bytes:
    """A still picture as it is sent: nothing but the picture."""
    file = BytesIO()
    Image.fromarray(picture).save(file, "JPEG", quality=quality)
    return file.getvalue()
