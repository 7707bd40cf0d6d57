"""Two databases with one difference are told apart, whatever it is."""

import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from django.db import connections
from pytest_django import DjangoDbBlocker

from course.backup import copying
from course.backup.refusal import BackupRefused
from course.databases import database_at
from exercises.models import Attempt
from tests.quay_street import quay_street
from tests.sites import ON_POSTGRESQL, new_database

CHANGES = {
    "a word": "UPDATE exercises_attempt SET skill = skill || '.' WHERE id = 700",
    "within JSON": """UPDATE exercises_attempt SET answer = '{"mode": 1}' WHERE id = 700""",
    "a moment": "UPDATE exercises_attempt SET answered_at = '2026-11-01 00:00:00' WHERE id = 700",
    "one less": "DELETE FROM exercises_attempt WHERE id = 700",
    "another": "UPDATE exercises_attempt SET id = 70000 WHERE id = 700",
}


@pytest.fixture(scope="module")
def database(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return quay_street(tmp_path_factory.mktemp("demo") / "data").database


@pytest.fixture
def two(database: Path, tmp_path: Path, django_db_blocker: DjangoDbBlocker) -> Iterator[Path]:
    """The aliases `one` and `two`, of files that are alike; the path of the second."""
    copy = shutil.copyfile(database, tmp_path / "two.sqlite3")
    default = connections.databases["default"]
    for alias, path in (("one", database), ("two", copy)):
        connections.databases[alias] = {**default, **database_at(f"sqlite:///{path}")}
    with django_db_blocker.unblock():
        yield copy
        for alias in ("one", "two"):
            connections[alias].close()
            del connections[alias], connections.databases[alias]


def test_databases_that_are_alike_are_found_so(two: Path) -> None:
    for model in copying.tables():
        copying.compare(model, "one", "two")


@pytest.mark.parametrize("change", CHANGES.values(), ids=CHANGES)
@pytest.mark.parametrize("way", [("one", "two"), ("two", "one")], ids=["there", "back"])
def test_one_difference_is_found(two: Path, change: str, way: tuple[str, str]) -> None:
    with closing(sqlite3.connect(two)) as database, database:
        database.execute(change)

    with pytest.raises(BackupRefused, match="exercises_attempt"):
        copying.compare(Attempt, *way)


@pytest.mark.database
@pytest.mark.skipif(not ON_POSTGRESQL, reason="SQLite takes text of any length")
def test_row_that_is_not_taken_is_told_and_nothing_is_moved(tmp_path: Path) -> None:
    site = quay_street(tmp_path / "data")
    with closing(sqlite3.connect(site.database)) as database, database:
        database.execute("UPDATE exercises_attempt SET skill = ? WHERE id = 700", ["x" * 900])
    with new_database() as url:
        done = site.run("move_to", url)
        site.url = url

        assert "does not take a row of exercises_attempt between 501 and" in done.stderr
        assert "Traceback" not in done.stderr
        assert site.tables()["cohorts_person"] == {}
