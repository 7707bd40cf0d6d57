"""The parts of a file, counted before anything is decoded, and those left out that do nothing.

What takes most work costs least bytes: a JPEG's pass over all pixels can be had for 40 of them,
and a PNG's note of 1 kB can unfold to megabytes.
"""

import re
from collections.abc import Callable, Iterator

from exercises.signal.photographs.limits import MOST_PARTS, MOST_SCANS
from exercises.signal.photographs.trouble import PhotographRefused, PictureTrouble

# ITU-T T.81, B.1.1.2: FF once or more, then a code; none is 00. D0 to D7 stand within a scan.
MARKER = re.compile(rb"\xff+([\x01-\xcf\xd8-\xfe])")
END, SCAN = 0xD9, 0xDA
ALONE = {0x01, 0xD8}  # no length follows

# W3C PNG, 5.6 and 11: what the pixels need, and which way up they are.
NEEDED = {b"IHDR", b"PLTE", b"tRNS", b"IDAT", b"IEND", b"eXIf"}


def looked_through(content: bytes) -> bytes:
    """The picture without what does nothing for its pixels. PhotographRefused."""
    for begins, look in LOOKS.items():
        if content.startswith(begins):
            return look(content)
    raise PhotographRefused(PictureTrouble.NO_PICTURE)


def jpeg(content: bytes) -> bytes:
    for number, _ in enumerate(scans(content)):
        if number == MOST_SCANS:
            raise PhotographRefused(PictureTrouble.SCANS)
    return content


def scans(content: bytes) -> Iterator[int]:
    """Where each scan of a JPEG begins: the markers are walked as a decoder walks them."""
    at = 0
    while found := MARKER.search(content, at):
        code, at = found[1][0], found.end()
        if code == END:
            return
        if code == SCAN:
            yield found.start()
        if code not in ALONE:
            at += int.from_bytes(content[at : at + 2], "big")


def png(content: bytes) -> bytes:
    """W3C PNG, 5.3: a length, a name, so many bytes and a checksum of four."""
    kept, at = [content[:8]], 8
    for _ in range(MOST_PARTS):
        end = at + 12 + int.from_bytes(content[at : at + 4], "big")
        if content[at + 4 : at + 8] in NEEDED:
            kept.append(content[at:end])
        if end >= len(content):
            return b"".join(kept)
        at = end
    raise PhotographRefused(PictureTrouble.PARTS)


def webp(content: bytes) -> bytes:
    """RFC 9649, 2.3: a name, a length, so many bytes and one more where they are odd."""
    if content[8:12] != b"WEBP":
        raise PhotographRefused(PictureTrouble.NO_PICTURE)
    at = 12
    for _ in range(MOST_PARTS):
        if at >= len(content):
            return content
        length = int.from_bytes(content[at + 4 : at + 8], "little")
        at += 8 + length + length % 2
    raise PhotographRefused(PictureTrouble.PARTS)


LOOKS: dict[bytes, Callable[[bytes], bytes]] = {
    b"\xff\xd8\xff": jpeg,
    b"\x89PNG\r\n\x1a\n": png,
    b"RIFF": webp,
}
