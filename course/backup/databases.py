"""Which way a kind of database is backed up."""

from types import ModuleType

from django.db.backends.base.base import BaseDatabaseWrapper

from course.backup import postgresql, sqlite

KINDS: dict[str, ModuleType] = {"sqlite": sqlite, "postgresql": postgresql}
NAMES = {"sqlite": "SQLite", "postgresql": "PostgreSQL"}


def kind_of(database: BaseDatabaseWrapper) -> ModuleType:
    """A module with `dump`, `prove` and `put_back`."""
    return KINDS[database.vendor]
