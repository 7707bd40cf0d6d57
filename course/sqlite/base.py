"""Django's SQLite, which goes on reading where the disk is too full to open a database.

Opening one in WAL mode makes two files beside it. A site that is started on a full disk can't have
them; without this, nobody could even read until somebody made room.
"""

import sqlite3
import time
from pathlib import Path
from typing import Any
from urllib.parse import quote

from django.db.backends.sqlite3 import base

# What SQLite says where it can't have its files: the second is of the one that is shared memory.
NO_ROOM = {"SQLITE_FULL", "SQLITE_IOERR_SHMSIZE", "SQLITE_IOERR_SHMOPEN", "SQLITE_CANTOPEN"}


class DatabaseWrapper(base.DatabaseWrapper):
    def get_new_connection(self, conn_params: dict[str, Any]) -> Any:
        try:
            return super().get_new_connection(conn_params)
        except sqlite3.OperationalError as error:
            if error.sqlite_errorname not in NO_ROOM or not is_whole(Path(conn_params["database"])):
                raise
            return self.to_read_only(conn_params)

    def to_read_only(self, conn_params: dict[str, Any]) -> Any:
        """A connection that looks for no changes by others, so it is kept for one request only."""
        self.close_at = time.monotonic()
        self.init_commands: list[str] = []
        name = f"file:{quote(str(conn_params['database']))}?mode=ro&immutable=1"
        return super().get_new_connection({**conn_params, "database": name})


def is_whole(path: Path) -> bool:
    """Is everything in the file itself, and nothing in a WAL?"""
    wal = Path(f"{path}-wal")
    return size_of(path) > 0 and size_of(wal) == 0


def size_of(path: Path) -> int:
    return path.stat().st_size if path.is_file() else 0
