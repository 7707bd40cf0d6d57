"""Rows from one database into another, of another kind too, and compared there one by one."""

from collections.abc import Iterable, Iterator
from itertools import islice
from typing import Any, TypeVar

from django.apps import apps
from django.core.management.color import no_style
from django.db import DatabaseError, connections, models

from course.backup.refusal import BackupRefused

AT_ONCE = 500  # rows in memory

Row = TypeVar("Row")


def tables() -> list[type[models.Model]]:
    """Everything that the site keeps, in tables of its own."""
    every = apps.get_models(include_auto_created=True)
    return [each for each in every if each._meta.managed and not each._meta.proxy]


def clear(target: str) -> None:
    """Take out what `migrate` writes into an empty database: it has other numbers there."""
    with connections[target].cursor() as cursor:
        for statement in connections[target].ops.sql_flush(
            no_style(), [each._meta.db_table for each in tables()], reset_sequences=False
        ):
            cursor.execute(statement)


def copy(model: type[models.Model], source: str, target: str) -> int:
    """All rows of a table, in an order of no meaning; how many. Within the target's transaction."""
    number = 0
    for rows in in_parts(model._base_manager.using(source).order_by("pk").iterator(AT_ONCE)):
        try:
            model._base_manager.using(target).bulk_create(rows)
        except DatabaseError as error:
            first, last = rows[0].pk, rows[-1].pk
            raise BackupRefused(
                f"The other database does not take a row of {model._meta.db_table} "
                f"between {first} and {last}: {error}"
            ) from error
        number += len(rows)
    return number


def compare(model: type[models.Model], source: str, target: str) -> None:
    """BackupRefused unless both have the same rows, each the same in every column."""
    table = model._meta.db_table
    rows = model._base_manager.using(target)
    number = 0
    for part in in_parts(values(model._base_manager.using(source))):
        number += len(part)
        theirs = dict(pairs(values(rows.filter(pk__in=[row[0] for row in part]))))
        for key, kept in pairs(part):
            if theirs.get(key) != kept:
                raise BackupRefused(f"Row {key} of {table} is another one after the move.")
    if rows.count() != number:
        raise BackupRefused(f"{table} has more rows after the move than before.")


def values(rows: models.QuerySet[models.Model]) -> Iterator[tuple[Any, ...]]:
    """Each row as a tuple: its key, then every column."""
    columns = [field.attname for field in rows.model._meta.concrete_fields]
    return rows.order_by("pk").values_list("pk", *columns).iterator(AT_ONCE)


def pairs(rows: Iterable[tuple[Any, ...]]) -> Iterator[tuple[Any, tuple[Any, ...]]]:
    return ((row[0], row[1:]) for row in rows)


def in_parts(rows: Iterator[Row]) -> Iterator[list[Row]]:
    while part := list(islice(rows, AT_ONCE)):
        yield part


def count_on(target: str) -> None:
    """Have the next row of each table get a number that none has."""
    with connections[target].cursor() as cursor:
        for statement in connections[target].ops.sequence_reset_sql(no_style(), tables()):
            cursor.execute(statement)
