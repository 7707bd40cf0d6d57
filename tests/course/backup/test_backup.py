"""What an operator does: back up, restore, and what is refused. Commands, on sites of their own."""

import stat
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.quay_street import backup, prepared, quay_street_here
from tests.sites import ON_POSTGRESQL, QUAY_STREET, Site, new_site

pytestmark = pytest.mark.database


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Site]:
    """The kept demo, which these tests only read."""
    with quay_street_here(tmp_path_factory.mktemp("demo") / "data") as site:
        yield site


@pytest.fixture(scope="module", name="backup")
def its_backup() -> Path:
    return backup()


@pytest.fixture
def empty(tmp_path: Path) -> Iterator[Site]:
    with new_site(tmp_path / "empty") as site:
        yield site


def pictures(site: Site) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in (site.data / "pictures").iterdir()}


def test_restored_site_has_every_row_and_picture_and_the_key(
    demo: Site, backup: Path, empty: Site
) -> None:
    said = empty.manage("restore", str(backup))

    assert empty.tables() == demo.tables()
    assert pictures(empty) == pictures(demo)
    assert len(pictures(empty)) == 2
    assert (empty.data / "secret-key").read_text() == demo.environment()["SECRET_KEY"]
    assert "Run manage.py migrate" not in said


def test_site_that_was_only_prepared_is_empty(demo: Site, backup: Path, empty: Site) -> None:
    prepared(empty)

    empty.manage("restore", str(backup))

    assert empty.tables() == demo.tables()


def test_full_site_is_refused_and_keeps_what_it_has(demo: Site, backup: Path) -> None:
    before = demo.tables()
    done = demo.run("restore", str(backup))

    assert (done.returncode, done.stderr) == (
        1,
        "CommandError: The site is not empty: it has 21 accounts. Nothing was changed.\n",
    )
    assert demo.tables() == before


def test_file_is_its_owners_alone_and_the_only_one(backup: Path) -> None:
    assert stat.S_IMODE(backup.stat().st_mode) == 0o600
    assert [*backup.parent.iterdir()] == [backup]


def test_compressed_backup_is_restored_too(demo: Site, empty: Site, tmp_path: Path) -> None:
    demo.manage("backup", str(tmp_path / "small.tar.gz"))
    empty.manage("restore", str(tmp_path / "small.tar.gz"))

    assert (tmp_path / "small.tar.gz").read_bytes()[:2] == b"\x1f\x8b"
    assert empty.tables() == demo.tables()


def test_pictures_that_are_not_there_are_told(demo: Site, tmp_path: Path) -> None:
    elsewhere = Site(tmp_path / "elsewhere", demo.url or f"sqlite:///{demo.database}")
    elsewhere.data.mkdir()
    done = elsewhere.run("backup", str(tmp_path / "backup.tar"))

    assert done.returncode == 0
    assert "Pictures that the database names and the folder has not: 2." in done.stderr


def test_another_key_in_the_environment_is_told(backup: Path, empty: Site) -> None:
    empty.variables["SECRET_KEY"] = "another-" * 8

    assert "SECRET_KEY is not the backup’s" in empty.manage("restore", str(backup))


@pytest.mark.skipif(ON_POSTGRESQL, reason="restoring the kept demo needs SQLite")
def test_backup_of_an_earlier_version_asks_for_migrate(empty: Site) -> None:
    assert "Run manage.py migrate." in empty.manage("restore", str(QUAY_STREET))


def test_programs_that_are_not_installed_are_told(demo: Site, tmp_path: Path) -> None:
    if not ON_POSTGRESQL:
        pytest.skip("SQLite needs no programs")
    demo_without = Site(demo.data, demo.url, {"PATH": str(tmp_path)})
    done = demo_without.run("backup", str(tmp_path / "backup.tar"))

    assert "pg_dump is not installed" in done.stderr
    assert not (tmp_path / "backup.tar").exists()
