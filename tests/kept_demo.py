"""The kept demo as its own version left it, in the kind of database that the tests run on."""

import json
import sqlite3
from contextlib import closing
from pathlib import Path

import psycopg
from psycopg import sql

from tests.quay_street import as_restored
from tests.sites import Site, in_sqlite

# The last migrations of that version, in the order in which they can be applied.
AS_IT_WAS = [
    ("cohorts", "0004"),
    ("lessons", "0001"),
    ("exercises", "0008"),
    ("admin", "0003"),
    ("sessions", "0001"),
]


def as_it_was(site: Site) -> Site:
    """Fill an empty site with the demo, and leave it at the tables of that version."""
    if not site.url:
        return as_restored(site.data)
    kept = as_restored(site.data)
    for app, number in AS_IT_WAS:
        site.manage("migrate", app, number, "--verbosity=0", "--skip-checks")
    with psycopg.connect(site.url) as database:
        fill(database, kept.database)
    return site


def fill(database: "psycopg.Connection[tuple[object, ...]]", kept: Path) -> None:
    """Put the rows of the SQLite file into tables of the same names and columns."""
    tables = in_sqlite(kept)
    del tables["django_migrations"], tables["django_content_type"], tables["auth_permission"]
    for name, rows in tables.items():
        for row in rows.values():
            columns = sql.SQL(", ").join(map(sql.Identifier, row))
            # PostgreSQL reads each value as its column's type.
            values = [None if value is None else str(value) for value in row.values()]
            places = sql.SQL(", ").join(sql.Placeholder() * len(values))
            insert = sql.SQL("INSERT INTO {} ({}) VALUES ({})")
            database.execute(insert.format(sql.Identifier(name), columns, places), values)
        if rows and "id" in next(iter(rows.values())):
            last = sql.SQL("SELECT setval(pg_get_serial_sequence({}, 'id'), max(id)) FROM {}")
            database.execute(last.format(sql.Literal(name), sql.Identifier(name)))


def spoil_summaries(site: Site) -> None:
    """Leave them as another version's rules may have made them: wrong, and some missing."""
    wrong = "UPDATE exercises_summary SET skills = '{}', steady = 9, weakest = 'none'"
    missing = "DELETE FROM exercises_summary WHERE person_id % 3 = 0"
    if site.url:
        with psycopg.connect(site.url) as server:
            server.execute(wrong)
            server.execute(missing)
    else:
        with closing(sqlite3.connect(site.database)) as file, file:
            file.execute(wrong)
            file.execute(missing)


def read(value: object) -> object:
    """JSON as what it says: SQLite gives its text, PostgreSQL gives it read."""
    return json.loads(value) if isinstance(value, str) else value
