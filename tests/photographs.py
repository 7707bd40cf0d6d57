"""Pictures as files, for tests: drawn small, with what a camera or somebody else may add."""

import re
import struct
import zlib
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from io import BytesIO
from typing import Any

from django.core.files.uploadedfile import SimpleUploadedFile
from PIL import Image

from exercises.signal.photographs.limits import AT_ONCE, WAITING
from exercises.signal.photographs.turn import DECODING

RED, BLUE = (200, 20, 20), (20, 20, 200)
PLACE = {1: "N", 2: (50.0, 3.0, 7.0), 3: "W", 4: (4.0, 2.0, 1.0)}
GPS = 0x8825


def leads(size: tuple[int, int] = (60, 40), mode: str = "RGB") -> Image.Image:
    """The left half red, the right half blue."""
    image = Image.new("RGB", size, RED)
    image.paste(BLUE, (size[0] // 2, 0, *size))
    return image.convert(mode)


def file_of(image: Image.Image, form: str = "JPEG", **options: Any) -> bytes:
    out = BytesIO()
    image.save(out, form, **options)
    return out.getvalue()


def noted(orientation: int = 1) -> bytes:
    """A JPEG with all that may stand beside the pixels: camera, place, comment, profile."""
    notes = Image.Exif()
    notes[0x0112] = orientation
    notes[0x010F] = "Camera of Wyn Carrow"
    notes.get_ifd(GPS).update(PLACE)
    return file_of(
        leads(), exif=notes, comment=b"at the quay", icc_profile=b"a profile" * 20, dpi=(300, 300)
    )


def sent(content: bytes, name: str = "leads.jpg", type: str = "image/jpeg") -> SimpleUploadedFile:
    return SimpleUploadedFile(name, content, type)


def layered(scans: int, size: tuple[int, int] = (60, 40)) -> bytes:
    """A progressive JPEG whose last scan is there again and again (ITU-T T.81, B.2.1)."""
    whole = file_of(leads(size), progressive=True)
    begins = [found.start() for found in re.finditer(rb"\xff\xda", whole)]
    last = whole[begins[-1] : -2]
    return whole[:-2] + last * (scans - len(begins)) + whole[-2:]


def chunk(name: bytes, content: bytes) -> bytes:
    """A part of a PNG (W3C PNG, 5.3)."""
    crc = struct.pack(">I", zlib.crc32(name + content))
    return struct.pack(">I", len(content)) + name + content + crc


def png(width: int, height: int, rows: bytes, *, interlaced: bool = False) -> bytes:
    """A PNG in RGB of eight bits, by hand (W3C PNG, 11.2.1)."""
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, interlaced)
    content = chunk(b"IHDR", head) + chunk(b"IDAT", zlib.compress(rows)) + chunk(b"IEND", b"")
    return b"\x89PNG\r\n\x1a\n" + content


def with_chunks(plain: bytes, chunks: bytes) -> bytes:
    """A PNG with more parts, after its first (8 bytes of signature, 25 of head)."""
    return plain[:33] + chunks + plain[33:]


@contextmanager
def all_places_taken() -> Iterator[None]:
    """Others are having pictures decoded, as many as may."""
    with ExitStack() as others:
        for _ in range(AT_ONCE + WAITING):
            DECODING.places.acquire()
            others.callback(DECODING.places.release)
        yield
