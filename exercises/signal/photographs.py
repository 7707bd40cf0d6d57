"""A picture that somebody sends: looked at, then drawn anew as a plain JPEG.

What it is, its content says, never its name. Nothing of the file that was sent is kept but the
pixels: no place, no time, no camera, no name, and nothing hidden before or behind them.
"""

import hashlib
from contextlib import suppress
from dataclasses import dataclass
from io import BytesIO
from threading import Lock
from typing import IO

import numpy as np
from PIL import Image, ImageOps

FORMATS = ("JPEG", "PNG", "WEBP")
LARGEST_FILE = 8_000_000  # bytes
MOST_PIXELS = 25_000_000
SIDE = 2000  # no side of what is kept is longer
QUALITY = 85
# What is made smaller as it is. It takes less memory than to turn the whole into RGB first.
SCALABLE = {"RGB", "RGBA", "CMYK", "L", "LA"}

# A decoded picture may take 400 MB for a moment: one at a time in each process.
DECODING = Lock()


class PhotographRefused(ValueError):
    """It is no picture that can be taken; the message is a sentence for whoever sent it."""


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
    """The picture in a file of `size` bytes; its first, where it moves. PhotographRefused."""
    if not size:
        raise PhotographRefused("The file is empty. Choose another one.")
    if size > LARGEST_FILE:
        most = LARGEST_FILE // 1_000_000
        raise PhotographRefused(f"The file is larger than {most} MB. Send a smaller picture.")
    with DECODING:
        image = opened(file)
        if image.width * image.height > MOST_PIXELS:
            raise too_many_pixels()
        return drawn_anew(decoded(image))


def opened(file: IO[bytes]) -> Image.Image:
    """By its first bytes; no pixel is decoded yet.

    Pillow warns of four times as many pixels as are taken, and refuses eight times as many.
    """
    try:
        return Image.open(file, formats=FORMATS)
    except (Image.DecompressionBombWarning, Image.DecompressionBombError) as error:
        raise too_many_pixels() from error
    except Exception as error:  # each format has errors of its own for what is broken
        raise PhotographRefused(
            "This is no JPEG, PNG or WebP picture. Send one of these."
        ) from error


def too_many_pixels() -> PhotographRefused:
    most = MOST_PIXELS // 1_000_000
    return PhotographRefused(
        f"The picture has more than {most} million pixels. Send a smaller one."
    )


def decoded(image: Image.Image) -> Image.Image:
    """Its pixels, the right way up. A large JPEG is decoded at a fraction of its size."""
    try:
        image.draft(None, (SIDE, SIDE))
        image.load()
    except Exception as error:  # as above; also a decoder that runs out of memory
        raise PhotographRefused("The picture is broken or cut short. Send it again.") from error
    with suppress(Exception):  # notes of a camera that can't be read don't say which way is up
        ImageOps.exif_transpose(image, in_place=True)
    return image


def drawn_anew(image: Image.Image) -> Photograph:
    """On a sheet of its own, since an image carries along what was noted beside it."""
    if image.mode not in SCALABLE:
        image = in_rgb(image)
    image.thumbnail((SIDE, SIDE))
    sheet = Image.new("RGB", image.size)
    sheet.paste(in_rgb(image))
    out = BytesIO()
    sheet.save(out, "JPEG", quality=QUALITY)
    return Photograph(jpeg=out.getvalue(), width=sheet.width, height=sheet.height)


def in_rgb(image: Image.Image) -> Image.Image:
    """What can be seen through is laid on white; of 16 bits the upper eight stay."""
    if image.mode.startswith("I"):
        return Image.fromarray((np.asarray(image) >> 8).astype(np.uint8)).convert("RGB")
    if not image.has_transparency_data:
        return image.convert("RGB")
    seen = image.convert("RGBA")
    sheet = Image.new("RGB", seen.size, "white")
    sheet.paste(seen, mask=seen.getchannel("A"))
    return sheet


def small(jpeg: bytes, side: int) -> bytes:
    """A kept picture, reduced to so many pixels a side."""
    with Image.open(BytesIO(jpeg), formats=("JPEG",)) as image:
        image.thumbnail((side, side))
        out = BytesIO()
        image.save(out, "JPEG", quality=QUALITY)
    return out.getvalue()
