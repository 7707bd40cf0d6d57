"""Decoding a picture and drawing it anew. Only a process with limits does this: `worker.py`.

The site itself imports nothing of it.
"""

from contextlib import suppress
from io import BytesIO

from PIL import Image, ImageOps

from exercises.signal.photographs.limits import FORMATS, MOST_PIXELS, QUALITY, SIDE
from exercises.signal.photographs.trouble import PhotographRefused, PictureTrouble

# What is made smaller as it is. It takes less memory than to turn the whole into RGB first.
SCALABLE = {"RGB", "RGBA", "CMYK", "L", "LA"}
UPPER_EIGHT = [value >> 8 for value in range(2**16)]


def drawn_anew(content: bytes) -> bytes:
    """A JPEG in RGB without metadata, no side over `SIDE` pixels. PhotographRefused."""
    image = opened(content)
    if image.width * image.height > MOST_PIXELS:
        raise PhotographRefused(PictureTrouble.PIXELS)
    return sheet_of(decoded(image))


def opened(content: bytes) -> Image.Image:
    """By its first bytes; no pixel is decoded yet.

    Pillow warns of four times as many pixels as are taken, and refuses eight times as many.
    """
    try:
        return Image.open(BytesIO(content), formats=FORMATS)
    except (Image.DecompressionBombWarning, Image.DecompressionBombError) as error:
        raise PhotographRefused(PictureTrouble.PIXELS) from error
    except MemoryError:
        raise
    except Exception as error:  # each format has errors of its own for what is broken
        raise PhotographRefused(PictureTrouble.NO_PICTURE) from error


def decoded(image: Image.Image) -> Image.Image:
    """Its pixels, the right way up. A large JPEG is decoded at a fraction of its size."""
    try:
        image.draft(None, (SIDE, SIDE))
        image.load()
    except MemoryError:
        raise
    except Exception as error:  # as above
        raise PhotographRefused(PictureTrouble.BROKEN) from error
    with suppress(Exception):  # notes of a camera that can't be read don't say which way is up
        ImageOps.exif_transpose(image, in_place=True)
    return image


def sheet_of(image: Image.Image) -> bytes:
    """On a sheet of its own, since an image carries along what was noted beside it."""
    if image.mode not in SCALABLE:
        image = in_rgb(image)
    image.thumbnail((SIDE, SIDE))
    sheet = Image.new("RGB", image.size)
    sheet.paste(in_rgb(image))
    out = BytesIO()
    sheet.save(out, "JPEG", quality=QUALITY)
    return out.getvalue()


def in_rgb(image: Image.Image) -> Image.Image:
    """What can be seen through is laid on white; of 16 bits the upper eight stay."""
    if image.mode.startswith("I"):
        return image.convert("I").point(UPPER_EIGHT, "L").convert("RGB")
    if not image.has_transparency_data:
        return image.convert("RGB")
    seen = image.convert("RGBA")
    sheet = Image.new("RGB", seen.size, "white")
    sheet.paste(seen, mask=seen.getchannel("A"))
    return sheet
