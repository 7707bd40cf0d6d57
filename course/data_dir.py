"""Keeping others out of DATA_DIR: what the site keeps is read by its own account alone.

Done when a process starts and when a database is opened, so that a folder which was left too open,
by an earlier version for example, does not stay so.
"""

import os
import stat
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

from django.conf import settings
from django.db.backends.base.base import BaseDatabaseWrapper

from course.databases import SQLITE

OTHERS = stat.S_IRWXG | stat.S_IRWXO


def close_to_others() -> None:
    """Take everybody else's rights away, from the folder and the files in it that are secret."""
    folder = Path(settings.DATA_DIR)
    if not folder.is_dir():
        return
    if not is_shared(folder):
        close(folder)
    for path in secrets_in(folder):
        close(path)


def secrets_in(folder: Path) -> Iterator[Path]:
    yield Path(settings.KEPT_KEY)
    yield from files_of_database(settings.DATABASES["default"])
    pictures = Path(settings.PICTURES_DIR)
    yield pictures
    with suppress(OSError):
        yield from pictures.iterdir()


def files_of_database(database: dict[str, object]) -> list[Path]:
    """None where a server has it."""
    if database["ENGINE"] != SQLITE:
        return []
    return [Path(f"{database['NAME']}{ending}") for ending in ("", "-wal", "-shm")]


def close_database(connection: BaseDatabaseWrapper, **_: object) -> None:
    """SQLite makes a new file as its process makes any file: for others to read."""
    for path in files_of_database(connection.settings_dict):
        close(path)


def close(path: Path) -> None:
    """Leave a file or folder to its owner. What is not ours to change `check --deploy` tells."""
    with suppress(OSError):
        mode = stat.S_IMODE(path.stat().st_mode)
        if mode & OTHERS:
            path.chmod(mode & ~OTHERS)


def is_shared(folder: Path) -> bool:
    """A folder that others need: everybody's, one above the site's own code, other people's too,
    or one that not even its owner writes to, as the system's own are.

    Somebody set DATA_DIR to it by mistake. Its files are closed all the same.
    """
    told = folder.stat()
    within = folder.resolve()
    needed = [settings.BASE_DIR, Path(os.__file__), Path(os.environ.get("HOME", os.__file__))]
    return (
        bool(told.st_mode & stat.S_ISVTX)
        or not told.st_mode & stat.S_IWUSR
        or any(path.resolve().is_relative_to(within) for path in needed)
        or any(path.lstat().st_uid not in {0, told.st_uid} for path in folder.iterdir())
    )


def is_open(folder: Path) -> bool:
    """Can others look into it?"""
    return bool(folder.stat().st_mode & OTHERS)
