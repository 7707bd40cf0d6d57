"""A picture that is sent: taken by its content, within limits, and drawn anew."""

from io import BytesIO

import numpy as np
import pytest
from PIL import Image

from exercises.signal import photographs
from exercises.signal.photographs import Photograph, PhotographRefused, photograph, small
from tests.photographs import BLUE, RED, file_of, leads, noted, png

COLOURS = {"red": RED, "blue": BLUE, "white": (255, 255, 255), "grey": (128, 128, 128)}
NO_PICTURE = "This is no JPEG, PNG or WebP picture. Send one of these."
BROKEN = "The picture is broken or cut short. Send it again."
MANY = "The picture has more than 25 million pixels. Send a smaller one."


def taken(content: bytes) -> Photograph:
    return photograph(BytesIO(content), len(content))


def refusal(content: bytes) -> str:
    with pytest.raises(PhotographRefused) as refused:
        taken(content)
    return str(refused.value)


def shown(made: Photograph) -> Image.Image:
    image = Image.open(BytesIO(made.jpeg))
    assert (image.format, image.mode, image.size) == ("JPEG", "RGB", (made.width, made.height))
    return image


def colour(image: Image.Image, x: int, y: int) -> str:
    """The nearest of a few colours: a JPEG keeps them nearly."""
    pixel = np.array(image.getpixel((x, y)))
    return min(COLOURS, key=lambda name: float(np.abs(pixel - COLOURS[name]).sum()))


def sides(image: Image.Image) -> tuple[str, str]:
    """What is on the left and what on the right."""
    width, height = image.size
    return colour(image, 3, height // 2), colour(image, width - 4, height // 2)


def segments(jpeg: bytes) -> list[int]:
    """The markers before the pixels, by ITU-T T.81, B.1.1.3: FF, a code, a length and content."""
    at, found = 2, []
    while jpeg[at + 1] != 0xDA:  # start of scan
        found.append(jpeg[at + 1])
        at += 2 + int.from_bytes(jpeg[at + 2 : at + 4], "big")
    return found


@pytest.mark.parametrize("form", ["JPEG", "PNG", "WEBP"])
def test_picture_is_taken_by_its_content(form: str) -> None:
    image = shown(taken(file_of(leads(), form)))

    assert image.size == (60, 40)
    assert sides(image) == ("red", "blue")


def test_nothing_but_pixels_is_kept() -> None:
    """By the markers of ITU-T T.81, B.2.4: an APP0 and no other, no comment (FE)."""
    before, after = noted(), taken(noted()).jpeg

    assert {0xE1, 0xE2, 0xFE} <= set(segments(before))
    assert [code for code in segments(after) if code >= 0xE0] == [0xE0]
    image = Image.open(BytesIO(after))
    assert (dict(image.getexif()), image.getexif().get_ifd(0x8825)) == ({}, {})
    assert {"exif", "icc_profile", "comment", "dpi", "xmp"} & set(image.info) == set()
    assert [b"Wyn Carrow" in each for each in (before, after)] == [True, False]


def test_what_hangs_behind_a_picture_is_gone() -> None:
    page = b"<html><script>alert(1)</script></html>"
    made = taken(file_of(leads()) + page)

    assert b"script" not in made.jpeg
    assert made.jpeg == taken(file_of(leads())).jpeg
    assert made.jpeg.endswith(b"\xff\xd9")  # ITU-T T.81, B.2.1: end of image


@pytest.mark.parametrize(
    ("orientation", "size", "left"),
    [(1, (60, 40), "red"), (3, (60, 40), "blue"), (2, (60, 40), "blue")],
)
def test_picture_is_turned_the_right_way_up(
    orientation: int, size: tuple[int, int], left: str
) -> None:
    """The orientation of Exif, from memory: 3 is upside down, 2 is mirrored."""
    image = shown(taken(noted(orientation)))

    assert image.size == size
    assert sides(image)[0] == left


def test_picture_on_its_side_is_set_up() -> None:
    """Orientation 6 of Exif, from memory: what is stored on the left is the top."""
    image = shown(taken(noted(6)))

    assert image.size == (40, 60)
    assert (colour(image, 20, 3), colour(image, 20, 56)) == ("red", "blue")


@pytest.mark.filterwarnings("ignore:Corrupt EXIF data")  # told, and passed over
def test_broken_notes_of_a_camera_do_not_matter() -> None:
    made = taken(file_of(leads(), exif=b"Exif\0\0MM\0*\0\0\xff\xff"))

    assert (made.width, made.height) == (60, 40)


def test_large_picture_is_made_smaller() -> None:
    made = taken(file_of(leads((2600, 1300))))

    assert (made.width, made.height) == (2000, 1000)
    assert sides(shown(made)) == ("red", "blue")


@pytest.mark.parametrize(("mode", "form"), [("CMYK", "JPEG"), ("P", "PNG"), ("RGBA", "WEBP")])
def test_other_ways_of_keeping_colour_become_rgb(mode: str, form: str) -> None:
    assert sides(shown(taken(file_of(leads(mode=mode), form)))) == ("red", "blue")


@pytest.mark.parametrize(("mode", "form"), [("L", "JPEG"), ("1", "PNG"), ("LA", "PNG")])
def test_grey_becomes_rgb(mode: str, form: str) -> None:
    white = Image.new("RGB", (20, 20), "white").convert(mode)

    assert sides(shown(taken(file_of(white, form)))) == ("white", "white")


def test_sixteen_bits_keep_their_brightness() -> None:
    grey = Image.fromarray(np.full((10, 10), 0x7FFF, dtype=np.uint16))

    assert colour(shown(taken(file_of(grey, "PNG"))), 5, 5) == "grey"


def test_what_can_be_seen_through_lies_on_white() -> None:
    palette = leads(mode="P")
    clear = file_of(palette, "PNG", transparency=palette.getpixel((50, 20)))

    assert sides(shown(taken(clear))) == ("red", "white")


def test_first_of_moving_pictures_is_taken() -> None:
    moving = file_of(
        Image.new("RGB", (20, 20), RED),
        "WEBP",
        save_all=True,
        append_images=[Image.new("RGB", (20, 20), BLUE)],
    )

    assert colour(shown(taken(moving)), 5, 5) == "red"


@pytest.mark.parametrize(
    "content",
    [
        b"%PDF-1.7\n1 0 obj",
        b'<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>',
        b"<!DOCTYPE html><script>alert(1)</script>",
        b"hello",
        b"\xff\xd8\xff",
        b"\x89PNG\r\n\x1a\n",
        b"RIFF\x04\0\0\0WEBP",
        file_of(leads(), "GIF"),
        file_of(leads(), "BMP"),
        file_of(leads(), "TIFF"),
    ],
)
def test_what_is_no_picture_is_refused(content: bytes) -> None:
    assert refusal(content) == NO_PICTURE


@pytest.mark.parametrize("form", ["JPEG", "PNG"])
def test_picture_cut_short_is_refused(form: str) -> None:
    noise = Image.effect_noise((200, 200), 90).convert("RGB")
    content = file_of(noise, form)

    assert refusal(content[: len(content) // 2]) == BROKEN


def test_empty_file_is_refused() -> None:
    assert refusal(b"") == "The file is empty. Choose another one."


def test_large_file_is_refused_before_it_is_read(monkeypatch: pytest.MonkeyPatch) -> None:
    with pytest.raises(PhotographRefused, match="larger than 8 MB"):
        photograph(BytesIO(), photographs.LARGEST_FILE + 1)


def huge(width: int, height: int) -> bytes:
    """A PNG of a few bytes that says it has so many pixels."""
    return png(width, height, b"")


@pytest.mark.parametrize("size", [(5001, 5000), (10_000, 10_000), (60_000, 60_000)])
def test_too_many_pixels_are_refused_by_the_header(size: tuple[int, int]) -> None:
    assert refusal(huge(*size)) == MANY


def test_as_many_pixels_as_allowed_are_decoded() -> None:
    assert refusal(huge(5000, 5000)) == BROKEN  # not by the header: there are no pixels


def test_small_picture_keeps_its_shape() -> None:
    made = taken(file_of(leads((600, 400))))

    assert Image.open(BytesIO(small(made.jpeg, 240))).size == (240, 160)
