"""The parts of a file that is sent: counted before anything is decoded."""

import zlib
from io import BytesIO

import pytest
from PIL import Image

from exercises.signal.photographs import PhotographRefused, photograph
from exercises.signal.photographs.limits import MOST_PARTS, MOST_SCANS
from exercises.signal.photographs.parts import looked_through, scans
from tests.photographs import BLUE, RED, chunk, file_of, layered, leads, noted, png, with_chunks

PLAIN = file_of(leads(), "PNG")


def refusal(content: bytes) -> str:
    with pytest.raises(PhotographRefused) as refused:
        looked_through(content)
    return str(refused.value)


def size_of(content: bytes) -> tuple[int, int]:
    made = photograph(BytesIO(content), len(content))
    return made.width, made.height


@pytest.mark.parametrize(
    ("content", "number"),
    [
        (file_of(leads()), 1),
        (file_of(leads(), progressive=True), 10),
        (file_of(leads(mode="L"), progressive=True), 6),
        (layered(500), 500),
    ],
)
def test_scans_are_counted(content: bytes, number: int) -> None:
    """The usual progression has 10 scans in colour and 6 in grey (libjpeg, jcparam.c)."""
    assert len(list(scans(content))) == number


def test_only_scans_of_the_picture_itself_count() -> None:
    """Not those of a small one among its notes, nor of another behind it."""
    notes = b"Exif\0\0" + file_of(leads((20, 20)))
    content = file_of(leads(), exif=notes) + layered(50)

    assert len(list(scans(content))) == 1
    assert looked_through(content) == content


def test_jpeg_of_many_scans_is_refused_before_it_is_decoded() -> None:
    assert refusal(layered(MOST_SCANS + 1, (5000, 5000))) == (
        "The picture is stored in more than 32 layers. Save it anew as a plain JPEG, and send that."
    )


def test_jpeg_of_as_many_scans_as_allowed_is_taken() -> None:
    assert size_of(layered(MOST_SCANS)) == (60, 40)


@pytest.mark.parametrize(
    "content",
    [
        with_chunks(PLAIN, chunk(b"tEXt", b"a\0b") * MOST_PARTS),
        file_of(leads(), "WEBP") + b"ANMF\x04\0\0\0abcd" * MOST_PARTS,
    ],
)
def test_file_of_many_parts_is_refused(content: bytes) -> None:
    assert refusal(content) == (
        "The picture is stored in more than 5,000 parts. Save it anew as a plain JPEG, "
        "and send that."
    )


def test_notes_that_unfold_to_much_are_left_out() -> None:
    """Each of these is 64 kB in the file, and 64 MB unfolded (W3C PNG, 11.3.3.3)."""
    bomb = chunk(b"zTXt", b"note\0\0" + zlib.compress(b"\0" * 2**26, 9))
    content = with_chunks(PLAIN, bomb * 20)

    assert looked_through(content) == PLAIN
    assert size_of(content) == (60, 40)


def test_moving_png_is_its_first_picture() -> None:
    """The frames after it are parts that a plain PNG does not need."""
    more = Image.new("RGB", (60, 40), "white")
    moving = file_of(leads(), "PNG", save_all=True, append_images=[more] * 3)

    assert b"fdAT" in moving
    assert b"fdAT" not in looked_through(moving)
    assert size_of(moving) == (60, 40)


def test_what_pixels_need_stays() -> None:
    """Also which way up they are, and what can be seen through."""
    notes = Image.Exif()
    notes[0x0112] = 6
    palette = file_of(leads(mode="P"), "PNG", transparency=0, exif=notes)

    assert size_of(palette) == (40, 60)
    assert Image.open(BytesIO(looked_through(palette))).info["transparency"] == 0


def interlaced() -> bytes:
    """The left half red, the right half blue, 8 by 8, in seven passes (W3C PNG, 8.2: Adam7)."""
    passes = ((0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2))
    rows = b""
    for left, top, across, down in (*passes, (0, 1, 1, 2)):
        row = b"".join(bytes(RED if x < 4 else BLUE) for x in range(left, 8, across))
        rows += (b"\0" + row) * len(range(top, 8, down))
    return png(8, 8, rows, interlaced=True)


def test_interlaced_png_is_taken() -> None:
    content = interlaced()
    made = Image.open(BytesIO(photograph(BytesIO(content), len(content)).jpeg))

    red, blue = (made.getpixel((x, 4)) for x in (1, 6))
    assert isinstance(red, tuple)
    assert isinstance(blue, tuple)
    assert red[0] > red[2]
    assert blue[2] > blue[0]


@pytest.mark.parametrize("cut", [20, 40, 200])
@pytest.mark.parametrize("content", [noted(), PLAIN, file_of(leads(), "WEBP")])
def test_walk_ends_with_the_file(content: bytes, cut: int) -> None:
    """A length that leads beyond the end is for the decoder to complain of."""
    assert content[:cut].startswith(looked_through(content[:cut]))
