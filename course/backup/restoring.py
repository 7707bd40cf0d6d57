"""The verb that fills an empty site from a backup."""

from collections.abc import Iterable
from pathlib import Path
from tempfile import TemporaryDirectory

from django.conf import settings
from django.db import connection
from django.db.migrations.loader import MigrationLoader

from course.backup import archive
from course.backup.databases import NAMES, kind_of
from course.backup.emptiness import refuse_full_database, refuse_other_pictures
from course.backup.manifest import Manifest
from course.backup.refusal import BackupRefused
from course.disk import settle


def restore(source: Path) -> Manifest:
    """Fill the site with what is in the file. Raises `BackupRefused`, having changed nothing.

    The file is read whole before the site is touched. The database comes last: where something
    fails, the site is still empty, and restoring can begin again.
    """
    if not source.is_file():
        raise BackupRefused(f"There is no file {source}.")
    data = Path(settings.DATA_DIR)
    data.mkdir(mode=0o700, parents=True, exist_ok=True)
    refuse_full_database(connection, "The site")
    with TemporaryDirectory(prefix=".restore-", dir=data) as scratch:
        folder = Path(scratch)
        (folder / archive.PICTURES).mkdir()
        manifest = archive.read(source, folder.joinpath)
        refuse_other_database(manifest)
        refuse_later_version(manifest)
        refuse_other_pictures(manifest)
        fill(folder, manifest)
    return manifest


def refuse_other_database(manifest: Manifest) -> None:
    if manifest.database != connection.vendor:
        raise BackupRefused(
            f"The backup holds a database of {NAMES[manifest.database]}, and this site’s is of "
            f"{NAMES[connection.vendor]}. Restore it where DATABASE_URL names one of its kind, "
            "then move it with manage.py move_to."
        )


def refuse_later_version(manifest: Manifest) -> None:
    later = sorted({*manifest.migrations} - known())
    if later:
        raise BackupRefused(
            f"The backup was made by a later version of the site, which knows {later[0]}. "
            "Restore it with that version."
        )


def known() -> set[str]:
    """The migrations that this version of the site has."""
    return {".".join(each) for each in MigrationLoader(None).disk_migrations or ()}


def fill(folder: Path, manifest: Manifest) -> None:
    database = folder / archive.DATABASE
    kind_of(connection).prove(database, manifest.rows)
    place(folder / archive.KEY, Path(settings.KEPT_KEY))
    place_pictures((folder / archive.PICTURES).iterdir())
    kind_of(connection).put_back(connection, database, manifest.rows)


def place_pictures(files: Iterable[Path]) -> None:
    target = Path(settings.PICTURES_DIR)
    target.mkdir(mode=0o700, exist_ok=True)
    for path in files:
        place(path, target / path.name)
    settle(target)


def place(path: Path, target: Path) -> None:
    path.chmod(0o600)
    settle(path)
    path.replace(target)
