"""Pictures as files, for tests: drawn small, with what a camera or somebody else may add."""

from io import BytesIO
from typing import Any

from django.core.files.uploadedfile import SimpleUploadedFile
from PIL import Image

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
