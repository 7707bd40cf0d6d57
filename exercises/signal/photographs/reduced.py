"""What was kept, in small."""

from io import BytesIO

from PIL import Image

from exercises.signal.photographs.limits import QUALITY


def small(jpeg: bytes, side: int) -> bytes:
    """A kept picture, reduced to so many pixels a side."""
    with Image.open(BytesIO(jpeg), formats=("JPEG",)) as image:
        image.thumbnail((side, side))
        out = BytesIO()
        image.save(out, "JPEG", quality=QUALITY)
    return out.getvalue()
