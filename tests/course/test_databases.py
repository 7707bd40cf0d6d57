"""Connections to SQLite stay open, so that no request pays for opening and closing the WAL."""

import time
from pathlib import Path

import pytest

from course.databases import POSTGRESQL, SQLITE, database_at
from tests.quay_street import quay_street
from tests.served import Visitor, served


def test_wal_stays_between_requests(tmp_path: Path) -> None:
    site = quay_street(tmp_path / "data")
    wal = site.database.with_name(f"{site.database.name}-wal")
    with served(site) as address:
        page = Visitor(address).sign_in("wren")

        assert (page.status, page.address) == (200, f"{address}/")
        time.sleep(1)  # a request ends after its answer was sent
        assert wal.exists()


def test_url_names_a_database() -> None:
    assert database_at("sqlite:////var/lib/run-up/site.sqlite3")["ENGINE"] == SQLITE
    assert database_at("postgres://run-up@localhost/site")["ENGINE"] == POSTGRESQL


def test_what_a_url_asks_for_is_kept() -> None:
    options = database_at("postgres://run-up@host/site?sslmode=require")["OPTIONS"]

    assert (options["sslmode"], options["connect_timeout"]) == ("require", 5)


@pytest.mark.parametrize("url", ["", "run-up", "mysql://host/name", "postgres://host/"])
def test_url_that_names_none_is_refused(url: str) -> None:
    with pytest.raises(ValueError, match=r"^The site works with|^This is not the URL"):
        database_at(url)
