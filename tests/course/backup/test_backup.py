"""What an operator does: back up, restore, and what is refused. Commands, on sites of their own."""

import gzip
import io
import lzma
import os
import stat
import tarfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from course.backup import archive
from tests.sites import ON_POSTGRESQL, QUAY_STREET, Site, new_database, new_site, quay_street

pytestmark = pytest.mark.database


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Site]:
    """The kept demo, which these tests only read."""
    data = tmp_path_factory.mktemp("demo") / "data"
    if not ON_POSTGRESQL:
        yield quay_street(data)
        return
    with new_database() as url:
        yield quay_street(data, url)


@pytest.fixture(scope="module")
def backup(demo: Site, tmp_path_factory: pytest.TempPathFactory) -> Path:
    file = tmp_path_factory.mktemp("backups") / "quay-street.tar"
    demo.manage("backup", str(file))
    return file


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
    empty.data.mkdir()
    empty.manage("migrate", "--verbosity=0")

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


def test_pictures_of_others_are_refused(backup: Path, empty: Site) -> None:
    folder = empty.data / "pictures"
    folder.mkdir(parents=True)
    (folder / "somebody-elses.jpg").write_bytes(b"\xff\xd8")
    done = empty.run("restore", str(backup))

    assert "its folder of pictures has 1 that the backup has not" in done.stderr
    assert [path.name for path in empty.data.iterdir() if path.is_dir()] == ["pictures"]
    assert [path.name for path in folder.iterdir()] == ["somebody-elses.jpg"]


def test_file_is_its_owners_alone_and_the_only_one(backup: Path) -> None:
    assert stat.S_IMODE(backup.stat().st_mode) == 0o600
    assert [*backup.parent.iterdir()] == [backup]


def test_backup_that_fails_leaves_the_last_one(empty: Site, tmp_path: Path) -> None:
    last = tmp_path / "last.tar"
    last.write_text("the last one")
    empty.data.mkdir()
    empty.manage("migrate", "--verbosity=0")
    done = empty.run("backup", str(last))

    assert "There is nothing to back up: nobody has an account." in done.stderr
    assert (done.returncode, last.read_text()) == (1, "the last one")
    assert sorted(path.name for path in tmp_path.iterdir()) == ["empty", "last.tar"]


@pytest.mark.parametrize(
    ("command", "sentence"),
    [
        ("backup", "The folder /nowhere is missing."),
        ("restore", "There is no file /nowhere/backup.tar."),
    ],
)
def test_file_that_is_nowhere_is_told(demo: Site, command: str, sentence: str) -> None:
    assert demo.run(command, "/nowhere/backup.tar").stderr == f"CommandError: {sentence}\n"


@pytest.mark.parametrize("what", ["pipe", "folder", "name"])
def test_place_for_no_file_is_refused(demo: Site, tmp_path: Path, what: str) -> None:
    pipe, folder, name = tmp_path / "pipe", tmp_path / "folder", tmp_path / ("long" * 100)
    os.mkfifo(pipe)
    folder.mkdir()
    target = {"pipe": pipe, "folder": folder, "name": name}[what]
    done = demo.run("backup", str(target))

    reason = "can’t be written: File name too long." if what == "name" else "is no file."
    assert done.stderr.startswith(f"CommandError: {target} {reason}")
    assert (done.returncode, done.stderr.count("\n")) == (1, 1)
    assert sorted(tmp_path.iterdir()) == [folder, pipe]
    assert pipe.is_fifo()


NO_BACKUPS = {
    "text": b"A log of the recorders, by hand.\n" * 40,
    "nothing": b"",
    "gzip": gzip.compress(b"A log")[:-9],
    "xz": lzma.compress(b"A log")[:-9],
}


@pytest.mark.parametrize("kind", NO_BACKUPS)
def test_file_that_is_no_backup_is_told(empty: Site, tmp_path: Path, kind: str) -> None:
    file = tmp_path / "log"
    file.write_bytes(NO_BACKUPS[kind])
    done = empty.run("restore", str(file))

    assert done.stderr == f"CommandError: {file} is no backup, or a damaged one.\n"
    assert done.returncode == 1


def test_compressed_backup_is_restored_too(demo: Site, empty: Site, tmp_path: Path) -> None:
    demo.manage("backup", str(tmp_path / "small.tar.gz"))
    empty.manage("restore", str(tmp_path / "small.tar.gz"))

    assert (tmp_path / "small.tar.gz").read_bytes()[:2] == b"\x1f\x8b"
    assert empty.tables() == demo.tables()


def test_damaged_backup_changes_nothing(backup: Path, empty: Site, tmp_path: Path) -> None:
    damaged = tmp_path / "damaged.tar"
    content = bytearray(backup.read_bytes())
    content[len(content) // 2] ^= 1
    damaged.write_bytes(content)
    done = empty.run("restore", str(damaged))

    assert "database is not what was written" in done.stderr
    assert "Traceback" not in done.stderr
    assert not any(empty.data.iterdir())


def test_backup_of_a_later_version_is_refused(backup: Path, empty: Site, tmp_path: Path) -> None:
    later = tmp_path / "later.tar"
    with tarfile.open(backup) as source, tarfile.open(later, "w") as target:
        for member in source:
            file = source.extractfile(member)
            assert file
            content = file.read()
            if member.name == archive.MANIFEST:
                content = content.replace(b"exercises.0001_initial", b"exercises.9001_films")
                member.size = len(content)
            target.addfile(member, io.BytesIO(content))
    done = empty.run("restore", str(later))

    assert "a later version of the site, which knows exercises.9001_films" in done.stderr
    assert done.returncode == 1


def test_pictures_that_are_not_there_are_told(demo: Site, tmp_path: Path) -> None:
    elsewhere = Site(tmp_path / "elsewhere", demo.url or f"sqlite:///{demo.database}")
    elsewhere.data.mkdir()
    done = elsewhere.run("backup", str(tmp_path / "backup.tar"))

    assert done.returncode == 0
    assert "Pictures that the database names and the folder has not: 2." in done.stderr


def test_another_key_in_the_environment_is_told(backup: Path, empty: Site) -> None:
    empty.variables["SECRET_KEY"] = "another-" * 8

    assert "SECRET_KEY is not the backup’s" in empty.manage("restore", str(backup))


@pytest.mark.skipif(not ON_POSTGRESQL, reason="a backup of another kind of database")
def test_backup_of_another_kind_of_database_is_refused(empty: Site) -> None:
    done = empty.run("restore", str(QUAY_STREET))

    assert "a database of SQLite, and this site’s is of PostgreSQL" in done.stderr


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
