"""A PostgreSQL database as a file of a backup, by the server's own programs."""

import os
import subprocess
from pathlib import Path

from django.db import transaction
from django.db.backends.base.base import BaseDatabaseWrapper

from course.backup.manifest import Rows
from course.backup.refusal import BackupRefused


def dump(database: BaseDatabaseWrapper, target: Path) -> Rows:
    """What `pg_dump` writes, and the rows counted as of the same moment."""
    with transaction.atomic(using=database.alias), database.cursor() as cursor:
        cursor.execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY")
        cursor.execute("SELECT pg_export_snapshot()")
        moment = cursor.fetchone()[0]
        rows = counted(database)
        options = ["--format=custom", "--no-owner", "--no-privileges", f"--snapshot={moment}"]
        run(database, "pg_dump", *options, f"--file={target}")
    return rows


def prove(target: Path, rows: Rows) -> None:
    """Have all of the file read; its rows are counted when it is restored."""
    call(["pg_restore", "--file=/dev/null", str(target)], {})


def put_back(database: BaseDatabaseWrapper, source: Path, rows: Rows) -> None:
    """Fill the site's database, in one transaction; its own empty tables make room first."""
    clear(database)
    options = ["--single-transaction", "--exit-on-error", "--no-owner", "--no-privileges"]
    run(database, "pg_restore", *options, str(source))
    with database.cursor() as cursor:
        cursor.execute("ANALYZE")
    if counted(database) != rows:
        raise BackupRefused("The restored database has not the rows that it should have.")


def clear(database: BaseDatabaseWrapper) -> None:
    """Drop the tables of a site that nobody has used."""
    with database.cursor() as cursor:
        for name in database.introspection.table_names(cursor):
            cursor.execute(f"DROP TABLE {database.ops.quote_name(name)} CASCADE")


def counted(database: BaseDatabaseWrapper) -> Rows:
    rows = {}
    with database.cursor() as cursor:
        for name in database.introspection.table_names(cursor):
            cursor.execute(f"SELECT count(*) FROM {database.ops.quote_name(name)}")  # noqa: S608
            rows[name] = cursor.fetchone()[0]
    return rows


def run(database: BaseDatabaseWrapper, program: str, *arguments: str) -> None:
    """Run one of the server's programs on this database, which it is told as Django tells psql."""
    told, secrets = database.client.settings_to_cmd_args_env(database.settings_dict, [])
    _, *where, name = told
    call([program, *where, f"--dbname={name}", *arguments], secrets or {})


def call(command: list[str], secrets: dict[str, str]) -> None:
    environment = os.environ | secrets
    try:
        done = subprocess.run(  # noqa: S603 - the server's own program, and our own words
            command, env=environment, capture_output=True, text=True, check=False
        )
    except FileNotFoundError as error:
        raise BackupRefused(
            f"{command[0]} is not installed: it comes with PostgreSQL’s client programs."
        ) from error
    if done.returncode:
        raise BackupRefused(f"{command[0]} stopped: {done.stderr.strip()}")
