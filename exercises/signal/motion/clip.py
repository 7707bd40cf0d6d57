"""Short moving pictures: an animated WebP, written a frame at a time.

The container is written here (RFC 9649), because Pillow keeps every frame until the last;
each frame's own data is Pillow's. It plays once, so that nothing goes on by itself.
"""

from collections.abc import Iterable
from io import BytesIO
from struct import pack
from typing import BinaryIO

from PIL import Image

from exercises.signal.arrays import Picture
from exercises.tape import Rate

QUALITY, EFFORT = 70, 2
ANIMATED, ONCE = 0x02, 1
NOT_BLENDED = 0x02


def clip(frames: Iterable[Picture], rate: Rate) -> bytes:
    """A moving picture in memory, that grows by its compressed frames only."""
    file = BytesIO()
    write_clip(frames, file, rate)
    return file.getvalue()


def write_clip(frames: Iterable[Picture], file: BinaryIO, rate: Rate) -> None:
    """The same to a file that can be sought in; in memory there is one frame at a time."""
    file.write(b"RIFF\0\0\0\0WEBP")
    size = (0, 0)
    shown = 0
    for shown, frame in enumerate(frames, 1):
        if shown == 1:
            size = frame.shape[1], frame.shape[0]
            file.write(_header(size))
        elif size != (frame.shape[1], frame.shape[0]):
            raise ValueError("The frames of a clip must be of one size.")
        file.write(_frame(frame, _until(shown, rate) - _until(shown - 1, rate)))
    if not shown:
        raise ValueError("A clip needs at least one frame.")
    length = file.tell()
    file.seek(4)
    file.write(pack("<I", length - 8))
    file.seek(length)


def _until(frames: int, rate: Rate) -> int:
    """Milliseconds that so many frames take: rounded in all, so that they don't drift."""
    return round(1000 * frames / rate.fraction)


def _header(size: tuple[int, int]) -> bytes:
    canvas = pack("<I", ANIMATED) + _three(size[0] - 1) + _three(size[1] - 1)
    return _chunk(b"VP8X", canvas) + _chunk(b"ANIM", pack("<IH", 0xFF000000, ONCE))


def _frame(frame: Picture, milliseconds: int) -> bytes:
    high, wide = frame.shape[:2]
    place = _three(0) + _three(0) + _three(wide - 1) + _three(high - 1)
    still = BytesIO()
    Image.fromarray(frame).save(still, "WEBP", quality=QUALITY, method=EFFORT)
    data = still.getvalue()[12:]  # what follows RIFF, size and WEBP is the one chunk of a still
    return _chunk(b"ANMF", place + _three(milliseconds) + bytes([NOT_BLENDED]) + data)


def _three(number: int) -> bytes:
    return number.to_bytes(3, "little")


def _chunk(name: bytes, data: bytes) -> bytes:
    return name + pack("<I", len(data)) + data + b"\0" * (len(data) % 2)
