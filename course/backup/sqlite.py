"""An SQLite database as a file of a backup."""

import sqlite3
from contextlib import closing
from pathlib import Path

from django.db.backends.base.base import BaseDatabaseWrapper

from course.backup.manifest import Rows
from course.backup.refusal import BackupRefused

TABLES = """
    SELECT name FROM sqlite_schema WHERE type = 'table' AND substr(name, 1, 7) != 'sqlite_'
"""


def dump(database: BaseDatabaseWrapper, target: Path) -> Rows:
    """A copy as of one moment, by SQLite's own way to copy a database that is written to.

    Whoever writes meanwhile is not held up. The copy needs no `-wal` file beside it.
    """
    with closing(opened(path_of(database))) as source, closing(opened(target)) as copy:
        source.execute("BEGIN")
        rows = counted(source)  # reading fixes the moment, for the copy too
        source.backup(copy)
        copy.execute("PRAGMA journal_mode=DELETE")
    return rows


def prove(target: Path, rows: Rows) -> None:
    """BackupRefused unless the file is a sound database of so many rows."""
    with closing(opened(target)) as copy:
        problems = [
            *copy.execute("PRAGMA integrity_check"),
            *copy.execute("PRAGMA foreign_key_check"),
        ]
        if problems != [("ok",)]:
            raise BackupRefused(f"The copy of the database is not sound: {problems[0][0]}.")
        if counted(copy) != rows:
            raise BackupRefused("The copy of the database has not the rows that it should have.")


def put_back(database: BaseDatabaseWrapper, source: Path, rows: Rows) -> None:
    """Fill the site's database, in one transaction: processes that have it open go on."""
    database.close()
    path = path_of(database)
    path.touch(mode=0o600)  # SQLite itself would let others read it
    with closing(opened(source)) as copy, closing(opened(path)) as target:
        copy.backup(target)
    prove(path, rows)


def path_of(database: BaseDatabaseWrapper) -> Path:
    return Path(database.settings_dict["NAME"])


def opened(path: Path) -> sqlite3.Connection:
    """A connection of our own, that begins no transaction by itself."""
    return sqlite3.connect(path, isolation_level=None, timeout=20)


def counted(connection: sqlite3.Connection) -> Rows:
    return {
        name: connection.execute(f'SELECT count(*) FROM "{name}"').fetchone()[0]  # noqa: S608
        for (name,) in connection.execute(TABLES).fetchall()
    }
