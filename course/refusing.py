"""One sentence in place of a traceback, for what whoever runs the site can put right."""

import errno
import sqlite3
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from django.conf import settings
from django.core.exceptions import ImproperlyConfigured
from django.db import DatabaseError, OperationalError

from course.environment import Misconfigured
from course.unwritable import causes_of, kind_of, no_room

CLOSED = {errno.EROFS, errno.EACCES, errno.EPERM}
DISK_FULL = {errno.ENOSPC, errno.EDQUOT}
NOT_PREPARED = {"42P01", "42703"}  # PostgreSQL: no such table, no such column
FULL = "The disk is full. Make room on it, then try again."
PREPARE = "The database has not been prepared for this version: run manage.py migrate."
OF_SQLITE = {
    sqlite3.SQLITE_FULL: FULL,
    sqlite3.SQLITE_READONLY: "The database {path} can be read, but not written to.",
    sqlite3.SQLITE_CANTOPEN: "The database {path} can’t be opened. Is DATA_DIR the site’s folder?",
    sqlite3.SQLITE_NOTADB: "The file {path} is no database. Restore a backup.",
    sqlite3.SQLITE_CORRUPT: "The database {path} is damaged. Restore a backup.",
    sqlite3.SQLITE_BUSY: "The database {path} is in use by another process. Try again.",
    sqlite3.SQLITE_IOERR: "The disk of the database {path} fails, or is full.",
}


@contextmanager
def in_a_sentence(status: int = 1) -> Iterator[None]:
    """End the process with a sentence and this status; with a traceback if the fault is ours."""
    try:
        yield
    except Exception as error:
        sentence = sentence_of(error)
        if not sentence:
            raise
        print(sentence, file=sys.stderr, flush=True)
        sys.exit(status)


def sentence_of(error: Exception) -> str:
    """Empty for what nobody but a maintainer can put right."""
    causes = list(causes_of(error))
    of_database = [each for each in causes if isinstance(each, sqlite3.Error)]
    if of_database:
        return of_sqlite(of_database[-1])
    match error:
        case Misconfigured() | ImproperlyConfigured():
            return str(error)
        case DatabaseError():
            return of_server(error)
        case OSError():
            return of_disk(error)
    return ""


def of_sqlite(error: sqlite3.Error) -> str:
    if "no such table" in str(error) or "no such column" in str(error):
        return PREPARE
    if no_room():
        return FULL
    path = Path(settings.DATABASES["default"]["NAME"])
    return OF_SQLITE.get(kind_of(error), "").format(path=path)


def of_server(error: DatabaseError) -> str:
    if getattr(error.__cause__, "sqlstate", None) in NOT_PREPARED:
        return PREPARE
    first = str(error).partition("\n")[0]
    return f"The database can’t be used: {first}" if isinstance(error, OperationalError) else ""


def of_disk(error: OSError) -> str:
    if error.errno in DISK_FULL:
        return FULL
    path = Path(str(error.filename))
    ours = Path(settings.DATA_DIR).absolute()
    if error.errno in CLOSED or path.absolute().is_relative_to(ours):
        return f"{path}: {error.strerror}. Is DATA_DIR a folder that the site may write to?"
    return ""
