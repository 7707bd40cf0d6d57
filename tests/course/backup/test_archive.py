"""A file that is not what was written is refused, whatever was done to it."""

import gzip
import io
import tarfile
from collections.abc import Callable
from pathlib import Path

import pytest

from course.backup import archive
from course.backup.manifest import Manifest
from course.backup.refusal import BackupRefused

CONTENT = {archive.DATABASE: b"rows " * 3000, archive.KEY: b"k" * 50, "pictures/a.jpg": b"\xff\xd8"}


def write(path: Path, content: dict[str, bytes], *, compressed: bool = False) -> Path:
    with archive.opened_to_write(path, compressed=compressed) as tar:
        members = {name: archive.add_content(tar, name, each) for name, each in content.items()}
        manifest = Manifest(
            made_at="2026-05-04T12:00:00+00:00",
            database="sqlite",
            migrations=["exercises.0001_initial"],
            rows={"exercises_attempt": 3},
            members=members,
        )
        archive.add_content(tar, archive.MANIFEST, manifest.as_json())
    return path


@pytest.mark.parametrize("compressed", [False, True])
def test_what_was_written_is_read(tmp_path: Path, compressed: bool) -> None:
    written = write(tmp_path / "backup", CONTENT, compressed=compressed)
    (tmp_path / "pictures").mkdir()

    manifest = archive.read(written, tmp_path.joinpath)

    assert manifest.rows == {"exercises_attempt": 3}
    assert {name: (tmp_path / name).read_bytes() for name in CONTENT} == CONTENT


def flip(content: bytes) -> bytes:
    middle = 2000  # within the database
    return content[:middle] + bytes([content[middle] ^ 1]) + content[middle + 1 :]


def with_another(content: bytes) -> bytes:
    """A member that no manifest names, put before it."""
    more = io.BytesIO()
    with tarfile.open(fileobj=more, mode="w") as tar:
        archive.add_content(tar, "pictures/b.jpg", b"more")
    return more.getvalue()[:1024] + content


DAMAGES: dict[str, Callable[[bytes], bytes]] = {
    "a bit": flip,
    "cut off within the database": lambda content: content[:4096],
    "cut off before the manifest": lambda content: content[: content.index(b"manifest.json")],
    "one more": with_another,
    "nothing": lambda content: b"",
    "no tar": lambda content: b"a letter " * 2000,
}


@pytest.mark.parametrize("damage", DAMAGES.values(), ids=DAMAGES)
@pytest.mark.parametrize("compressed", [False, True])
def test_damaged_file_is_refused(
    tmp_path: Path, damage: Callable[[bytes], bytes], compressed: bool
) -> None:
    path = write(tmp_path / "backup", CONTENT)
    damaged = damage(path.read_bytes())
    path.write_bytes(gzip.compress(damaged) if compressed else damaged)

    with pytest.raises(BackupRefused, match="backup"):
        archive.read(path)


def test_compressed_file_that_is_cut_off_is_refused(tmp_path: Path) -> None:
    path = write(tmp_path / "backup", CONTENT, compressed=True)
    path.write_bytes(path.read_bytes()[:-40])

    with pytest.raises(BackupRefused):
        archive.read(path)


@pytest.mark.parametrize(
    "name", ["../outside", "/etc/outside", "pictures/../../outside", "pictures/.hidden", "other"]
)
def test_name_that_is_no_member_is_refused(tmp_path: Path, name: str) -> None:
    path = write(tmp_path / "backup", CONTENT | {name: b"x"})

    with pytest.raises(BackupRefused, match="holds what no backup does"):
        archive.read(path)


def test_link_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "backup"
    with tarfile.open(path, "w") as tar:
        told = tarfile.TarInfo("database")
        told.type, told.linkname = tarfile.SYMTYPE, "/etc/hostname"
        tar.addfile(told)

    with pytest.raises(BackupRefused, match="holds what no backup does"):
        archive.read(path)


def test_later_format_is_refused() -> None:
    with pytest.raises(BackupRefused, match="a later version of the site"):
        Manifest.read(b'{"format": 2}')
