"""The file of a backup: a tar, written and read as a stream, its manifest last.

A file that was cut off has no manifest, and is refused for that.
"""

import gzip
import hashlib
import lzma
import re
import tarfile
import zlib
from collections.abc import Callable
from io import BytesIO
from pathlib import Path
from typing import IO, Protocol

from course.backup.manifest import Manifest, Member
from course.backup.refusal import BackupRefused

MANIFEST = "manifest.json"
DATABASE = "database"
KEY = "secret-key"
PICTURES = "pictures"
NAMES = re.compile(rf"{MANIFEST}|{DATABASE}|{KEY}|{PICTURES}/[\w-][\w.-]*")
BLOCK = 1 << 20  # bytes
# What Python's readers say of a file that is none of theirs, or breaks off.
DAMAGED = (tarfile.TarError, zlib.error, lzma.LZMAError, gzip.BadGzipFile, EOFError, ValueError)

Place = Callable[[str], Path | None]
"""Where to put a member of this name; None: it is read and left there."""


class Readable(Protocol):
    def read(self, size: int = -1, /) -> bytes: ...


class Digested:
    """What is read of a file, and its digest so far."""

    def __init__(self, file: Readable) -> None:
        self.file, self.size, self.digest = file, 0, hashlib.sha256()

    def read(self, size: int = -1, /) -> bytes:
        block = self.file.read(size)
        self.size += len(block)
        self.digest.update(block)
        return block

    def as_member(self) -> Member:
        return Member(self.size, self.digest.hexdigest())


def opened_to_write(path: Path, *, compressed: bool) -> tarfile.TarFile:
    return tarfile.open(path, "w:gz", compresslevel=6) if compressed else tarfile.open(path, "w")


def add(tar: tarfile.TarFile, name: str, file: IO[bytes], size: int) -> Member:
    told = tarfile.TarInfo(name)
    told.size, told.mode = size, 0o600
    digested = Digested(file)
    tar.addfile(told, digested)
    return digested.as_member()


def add_file(tar: tarfile.TarFile, name: str, path: Path) -> Member:
    with path.open("rb") as file:
        return add(tar, name, file, path.stat().st_size)


def add_content(tar: tarfile.TarFile, name: str, content: bytes) -> Member:
    return add(tar, name, BytesIO(content), len(content))


def read(path: Path, place: Place = lambda name: None) -> Manifest:
    """The manifest, once every member was found to be what it says; some are put into place.

    BackupRefused where the file is no backup, is not whole or was changed.
    """
    try:
        return compared(path, *taken(path, place))
    except DAMAGED as error:
        raise BackupRefused(f"{path} is no backup, or a damaged one.") from error
    except PermissionError as error:
        raise BackupRefused(f"{path} can’t be read: {error.strerror}.") from error


def taken(path: Path, place: Place) -> tuple[bytes, dict[str, Member]]:
    """The manifest as it was written, and the members as they are."""
    manifest, found = b"", {}
    with tarfile.open(path, "r:*") as tar:
        for told in tar:
            if not told.isfile() or not NAMES.fullmatch(told.name) or told.name in found:
                raise BackupRefused(f"{path} holds what no backup does: {told.name!r}.")
            if manifest:
                raise BackupRefused(f"{path} goes on after its end.")
            file = tar.extractfile(told)
            assert file is not None  # noqa: S101 - it is a file
            if told.name == MANIFEST:
                manifest = file.read()
            else:
                found[told.name] = put(file, place(told.name))
    return manifest, found


def put(file: IO[bytes], target: Path | None) -> Member:
    """Read a member to its end, and write it to the target, if it is to go anywhere."""
    digested = Digested(file)
    if target is None:
        while digested.read(BLOCK):
            pass
        return digested.as_member()
    with target.open("xb") as kept:
        while block := digested.read(BLOCK):
            kept.write(block)
    return digested.as_member()


def compared(path: Path, manifest: bytes, found: dict[str, Member]) -> Manifest:
    if not manifest:
        raise BackupRefused(f"{path} is not a whole backup: it has no manifest at its end.")
    said = Manifest.read(manifest)
    wrong = sorted(
        name for name in {*said.members, *found} if said.members.get(name) != found.get(name)
    )
    if wrong:
        raise BackupRefused(f"{path} is damaged: {wrong[0]} is not what was written.")
    return said
