"""The verb that makes a backup."""

import tarfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory

from django.conf import settings
from django.db import connection
from django.db.migrations.recorder import MigrationRecorder
from django.utils import timezone

from course.backup import archive, kept
from course.backup.databases import kind_of
from course.backup.emptiness import people_in
from course.backup.manifest import Manifest, Member, Rows
from course.backup.refusal import BackupRefused
from course.disk import settle
from course.refusing import DISK_FULL

COMPRESSED = {".gz", ".tgz"}


def back_up(target: Path) -> Manifest:
    """Write all that the site keeps to the file, which is there whole or not at all.

    The site may be in use. What is under the name already stays until the new file has been
    read again and found sound. Raises `BackupRefused`, or OSError where what is to be backed up
    can't be read, or the disk is full.
    """
    with told_of(target):
        refuse_place(target)
    if not people_in(connection):
        raise BackupRefused(
            "There is nothing to back up: nobody has an account. "
            "Are DATA_DIR and DATABASE_URL those of the site?"
        )
    with (
        told_of(target),
        TemporaryDirectory(prefix=f".{target.name}-", dir=target.parent) as folder,
    ):
        written = write(Path(folder), compressed=target.suffix in COMPRESSED)
        manifest = proved(written, Path(folder) / "proof")
        written.chmod(0o600)
        settle(written)
        written.replace(target)
        settle(target.parent)
    return manifest


def refuse_place(target: Path) -> None:
    """A device or a pipe would be replaced by the file, and whoever else uses it cut off."""
    if not target.parent.is_dir():
        raise BackupRefused(f"The folder {target.parent} is missing.")
    if target.exists() and not target.is_file():
        raise BackupRefused(f"{target} is no file. Name one that is a backup, or a new one.")


@contextmanager
def told_of(target: Path) -> Iterator[None]:
    """What the disk says of the target, in a sentence."""
    try:
        yield
    except OSError as error:
        kept_there = Path(str(error.filename)).is_relative_to(Path(settings.DATA_DIR).absolute())
        if kept_there or error.errno in DISK_FULL:
            raise
        raise BackupRefused(f"{target} can’t be written: {error.strerror}.") from error


def write(folder: Path, *, compressed: bool) -> Path:
    """The database first: a picture is on the disk before the row that names it."""
    dumped, target = folder / archive.DATABASE, folder / "backup"
    rows = kind_of(connection).dump(connection, dumped)
    with archive.opened_to_write(target, compressed=compressed) as tar:
        members = {archive.DATABASE: archive.add_file(tar, archive.DATABASE, dumped)}
        dumped.unlink()
        members[archive.KEY] = archive.add_content(tar, archive.KEY, kept.key())
        members |= add_pictures(tar)
        archive.add_content(tar, archive.MANIFEST, manifest_of(members, rows).as_json())
    return target


def add_pictures(tar: tarfile.TarFile) -> dict[str, Member]:
    members = {}
    for path in kept.pictures():
        name = f"{archive.PICTURES}/{path.name}"
        try:
            content = path.read_bytes()
        except FileNotFoundError:  # deleted meanwhile, with its learner
            continue
        members[name] = archive.add_content(tar, name, content)
    return members


def manifest_of(members: dict[str, Member], rows: Rows) -> Manifest:
    applied = MigrationRecorder(connection).applied_migrations()
    return Manifest(
        made_at=timezone.now().isoformat(timespec="seconds"),
        database=connection.vendor,
        migrations=sorted(".".join(each) for each in applied),
        rows=rows,
        members=members,
    )


def proved(written: Path, proof: Path) -> Manifest:
    """Read all of it again, and have the database that is in it checked."""
    place = {archive.DATABASE: proof}
    manifest = archive.read(written, place.get)
    kind_of(connection).prove(proof, manifest.rows)
    return manifest
