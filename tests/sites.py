"""Sites of their own for tests: a folder, a database, and manage.py as an operator runs it.

They use the kind of database that the tests run on. On PostgreSQL each has a database of its own
on that server, which is dropped with it.
"""

import os
import sqlite3
import subprocess
import sys
from collections.abc import Iterable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any
from uuid import uuid4

import psycopg
from psycopg import sql
from psycopg.rows import dict_row

ROOT = Path(__file__).parents[1]
QUAY_STREET = ROOT / "tests" / "fixtures" / "quay-street-51693dd.tar.xz"
ON_POSTGRESQL = os.environ.get("DATABASE_URL", "").startswith("postgres")
KEY = "only-for-a-site-of-a-test-" * 3

Row = dict[str, Any]
Table = dict[Any, Row]
"""Rows by their first column, which is their key."""


@dataclass
class Site:
    """`data` is its DATA_DIR; `url` its DATABASE_URL, empty for SQLite in that folder."""

    data: Path
    url: str = ""
    variables: dict[str, str] = field(default_factory=dict)

    def environment(self) -> dict[str, str]:
        # PG…: who the tests are to a PostgreSQL of their own, as libpq is told.
        own = {
            name: value
            for name, value in os.environ.items()
            if name in ("PATH", "HOME") or name.startswith("PG")
        }
        told = {"DATA_DIR": str(self.data), "HTTPS": "false", "SECRET_KEY": KEY}
        return own | told | ({"DATABASE_URL": self.url} if self.url else {}) | self.variables

    def run(self, *command: str, **given: Any) -> "subprocess.CompletedProcess[str]":
        """A command of manage.py, whatever comes of it."""
        return subprocess.run(
            [sys.executable, "manage.py", *command],
            cwd=ROOT,
            env=self.environment(),
            capture_output=True,
            text=True,
            check=False,
            **given,
        )

    def manage(self, *command: str, **given: Any) -> str:
        """What a command of manage.py says, which has to come out well."""
        done = self.run(*command, **given)
        assert done.returncode == 0, done.stdout + done.stderr
        return done.stdout

    @property
    def database(self) -> Path:
        """The file of its database, where it is SQLite."""
        return Path(self.url.removeprefix("sqlite:///") or self.data / "run-up.sqlite3")

    def tables(self) -> dict[str, Table]:
        """Every row of every table, read without the site's own code."""
        on_server = self.url.startswith("postgres")
        return in_postgresql(self.url) if on_server else in_sqlite(self.database)


def in_sqlite(path: Path) -> dict[str, Table]:
    with closing(sqlite3.connect(path)) as database:
        database.row_factory = sqlite3.Row
        names = database.execute(
            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'"
        ).fetchall()
        return {
            name: by_key(map(dict, database.execute(f'SELECT * FROM "{name}"')))  # noqa: S608
            for (name,) in names
        }


def in_postgresql(url: str) -> dict[str, Table]:
    with psycopg.connect(url) as database, database.cursor(row_factory=dict_row) as cursor:
        cursor.execute("SELECT tablename FROM pg_tables WHERE schemaname = 'public'")
        names = [row["tablename"] for row in cursor]
        every = sql.SQL("SELECT * FROM {}")
        return {name: by_key(cursor.execute(every.format(sql.Identifier(name)))) for name in names}


def by_key(rows: Iterable[Row]) -> Table:
    return {next(iter(row.values())): row for row in rows}


@contextmanager
def new_database() -> Iterator[str]:
    """The URL of an empty database on the server that the tests use."""
    name = f"site_{uuid4().hex}"
    with psycopg.connect(os.environ["DATABASE_URL"], autocommit=True) as server:
        server.execute(sql.SQL("CREATE DATABASE {}").format(sql.Identifier(name)))
        yield os.environ["DATABASE_URL"].rpartition("/")[0] + f"/{name}"
        server.execute(sql.SQL("DROP DATABASE {} WITH (FORCE)").format(sql.Identifier(name)))


@contextmanager
def new_site(data: Path) -> Iterator[Site]:
    """An empty one: not even its folder is there."""
    if not ON_POSTGRESQL:
        yield Site(data)
        return
    with new_database() as url:
        yield Site(data, url)
