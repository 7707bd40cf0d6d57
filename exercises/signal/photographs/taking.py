"""From a file that was sent to a photograph."""

import hashlib
from dataclasses import dataclass
from io import BytesIO
from typing import IO

from PIL import Image

from exercises.signal.photographs.apart import drawn_apart
from exercises.signal.photographs.limits import LARGEST_FILE
from exercises.signal.photographs.parts import looked_through
from exercises.signal.photographs.trouble import PhotographRefused, PictureTrouble
from exercises.signal.photographs.turn import DECODING


@dataclass(frozen=True, slots=True, kw_only=True)
class Photograph:
    """A JPEG in RGB without metadata; no side over `SIDE` pixels."""

    jpeg: bytes
    width: int
    height: int

    @property
    def digest(self) -> str:
        """SHA-256 of the JPEG: it tells this picture from all others."""
        return hashlib.sha256(self.jpeg).hexdigest()


def photograph(file: IO[bytes], size: int) -> Photograph:
    """The picture in a file of `size` bytes; its first, where it moves.

    PhotographRefused; PhotographsBusy, where it could not be looked at now.
    """
    if not size:
        raise PhotographRefused(PictureTrouble.EMPTY)
    if size > LARGEST_FILE:
        raise PhotographRefused(PictureTrouble.LARGE)
    content = looked_through(file.read())
    with DECODING.turn():
        jpeg = drawn_apart(content)
    with Image.open(BytesIO(jpeg), formats=("JPEG",)) as image:
        return Photograph(jpeg=jpeg, width=image.width, height=image.height)
