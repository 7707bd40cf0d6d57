"""What is no backup, or no place for one, is told in a sentence, and nothing is changed."""

import gzip
import io
import lzma
import os
import tarfile
from pathlib import Path

import pytest
from django.core.management import CommandError, call_command
from pytest_django import Settings

from course.backup import archive
from course.cohorts.models import Person
from tests.quay_street import backup
from tests.sites import ON_POSTGRESQL, QUAY_STREET

pytestmark = pytest.mark.django_db
NO_BACKUPS = {
    "text": b"A log of the recorders, by hand.\n" * 40,
    "nothing": b"",
    "gzip": gzip.compress(b"A log")[:-9],
    "xz": lzma.compress(b"A log")[:-9],
}


@pytest.fixture
def empty(tmp_path: Path, settings: Settings) -> Path:
    """The folder of a site that has tables, and nothing in them."""
    folder = tmp_path / "empty"
    folder.mkdir()
    settings.DATA_DIR = folder
    settings.KEPT_KEY, settings.PICTURES_DIR = folder / "secret-key", folder / "pictures"
    return folder


def refusal(*command: str) -> str:
    with pytest.raises(CommandError) as refused:
        call_command(*command)
    return str(refused.value)


def test_pictures_of_others_are_refused(empty: Path) -> None:
    folder = empty / "pictures"
    folder.mkdir()
    (folder / "somebody-elses.jpg").write_bytes(b"\xff\xd8")

    assert "its folder of pictures has 1 that the backup has not" in refusal(
        "restore", str(backup())
    )
    assert [*empty.iterdir()] == [folder]
    assert [path.name for path in folder.iterdir()] == ["somebody-elses.jpg"]


def test_backup_that_fails_leaves_the_last_one(empty: Path, tmp_path: Path) -> None:
    last = tmp_path / "last.tar"
    last.write_text("the last one")

    assert "There is nothing to back up: nobody has an account." in refusal("backup", str(last))
    assert last.read_text() == "the last one"
    assert sorted(tmp_path.iterdir()) == [empty, last]


@pytest.mark.parametrize(
    ("command", "sentence"),
    [
        ("backup", "The folder /nowhere is missing."),
        ("restore", "There is no file /nowhere/backup.tar."),
    ],
)
def test_file_that_is_nowhere_is_told(empty: Path, command: str, sentence: str) -> None:
    assert refusal(command, "/nowhere/backup.tar") == sentence


def test_place_for_no_file_is_refused(empty: Path, tmp_path: Path, mina: Person) -> None:
    pipe, folder, name = tmp_path / "pipe", tmp_path / "folder", tmp_path / ("long" * 100)
    os.mkfifo(pipe)
    folder.mkdir()

    assert [refusal("backup", str(place)).partition(".")[0] for place in (pipe, folder, name)] == [
        f"{pipe} is no file",
        f"{folder} is no file",
        f"{name} can’t be written: File name too long",
    ]
    assert sorted(tmp_path.iterdir()) == [empty, folder, pipe]
    assert pipe.is_fifo()


@pytest.mark.parametrize("kind", NO_BACKUPS)
def test_file_that_is_no_backup_is_told(empty: Path, tmp_path: Path, kind: str) -> None:
    file = tmp_path / "log"
    file.write_bytes(NO_BACKUPS[kind])

    assert refusal("restore", str(file)) == f"{file} is no backup, or a damaged one."


def test_damaged_backup_changes_nothing(empty: Path, tmp_path: Path) -> None:
    damaged = tmp_path / "damaged.tar"
    content = bytearray(backup().read_bytes())
    content[len(content) // 2] ^= 1
    damaged.write_bytes(content)

    assert "database is not what was written" in refusal("restore", str(damaged))
    assert [*empty.iterdir()] == []


def test_backup_of_a_later_version_is_refused(empty: Path, tmp_path: Path) -> None:
    later = tmp_path / "later.tar"
    with tarfile.open(backup()) as source, tarfile.open(later, "w") as target:
        for member in source:
            file = source.extractfile(member)
            assert file
            content = file.read()
            if member.name == archive.MANIFEST:
                content = content.replace(b"exercises.0001_initial", b"exercises.9001_films")
                member.size = len(content)
            target.addfile(member, io.BytesIO(content))

    assert "a later version of the site, which knows exercises.9001_films" in refusal(
        "restore", str(later)
    )


@pytest.mark.skipif(not ON_POSTGRESQL, reason="a backup of another kind of database")
def test_backup_of_another_kind_of_database_is_refused(empty: Path) -> None:
    assert "a database of SQLite, and this site’s is of PostgreSQL" in refusal(
        "restore", str(QUAY_STREET)
    )
