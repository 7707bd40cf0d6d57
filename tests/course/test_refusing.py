"""Whatever is wrong with a site is told in a sentence: by commands, by `start`, by the server."""

import subprocess
import sys
from pathlib import Path

import pytest

from tests.disks import fill, make_read_only, small_disk
from tests.quay_street import quay_street
from tests.sites import QUAY_STREET, ROOT, Site

START = ["manage.py", "start"]
SERVE = ["-m", "gunicorn", "course.wsgi", "--bind", "127.0.0.1:0", "--no-control-socket"]
NO_SPACE = "The disk is full. Make room on it, then try again."


def told(site: Site, command: list[str]) -> list[str]:
    """What it says before it stops by itself, without gunicorn's own lines."""
    done = subprocess.run(
        [sys.executable, "-W", "ignore", *command],
        cwd=ROOT,
        env=site.environment(),
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert done.returncode != 0
    return [line for line in done.stderr.splitlines() if not line.startswith("[")]


@pytest.fixture
def site(tmp_path: Path) -> Site:
    """Nothing but a folder."""
    site = Site(tmp_path / "data", variables={"PORT": "0"})
    site.data.mkdir()
    return site


SEE = "See README.md, “Configuration”."
NUMBER = f"PROXIES is “two”; it has to be a whole number from 0 to 100. {SEE}"
ZONE = (
    "TIME_ZONE is “Mars/Base”; it has to be the name of a time zone, Europe/London for example. "
    + SEE
)
SHORT = f"SECRET_KEY has 5 characters; sessions and links need 50. Set SECRET_KEY. {SEE}"
NO_KEY = f"SECRET_KEY_FILE names a file that can’t be read. {SEE}"


@pytest.mark.parametrize(
    ("variable", "value", "sentence"),
    [
        ("PROXIES", "two", NUMBER),
        ("TIME_ZONE", "Mars/Base", ZONE),
        ("SECRET_KEY", "short", SHORT),
        ("SECRET_KEY_FILE", "nowhere", NO_KEY),
    ],
)
@pytest.mark.parametrize("command", [START, SERVE], ids=["start", "serve"])
def test_variable_that_makes_no_sense_is_told(
    site: Site, command: list[str], variable: str, value: str, sentence: str
) -> None:
    site.variables[variable] = value

    assert told(site, command) == [sentence]


def test_commands_tell_it_too(site: Site) -> None:
    site.variables["PROXIES"] = "two"

    assert told(site, ["manage.py", "migrate"]) == [NUMBER]


def test_key_that_is_missing_is_told(site: Site) -> None:
    site.variables["SECRET_KEY"] = ""

    assert told(site, SERVE) == [SHORT.replace("5", "0", 1)]


def test_missing_folder_is_told_and_not_made(site: Site) -> None:
    site.data.rmdir()
    missing = f"The folder {site.data} is missing or can’t be written to. "

    assert [line.startswith(missing) for line in told(site, SERVE)] == [True]
    assert told(site, ["manage.py", "migrate"]) == [
        f"The database {site.database} can’t be opened. Is DATA_DIR the site’s folder?"
    ]
    assert any(missing.strip() in line for line in told(site, ["manage.py", "tidy"]))
    assert not site.data.exists()


def test_database_that_was_not_prepared_is_told(site: Site) -> None:
    assert told(site, ["manage.py", "backup", str(site.data / "backup.tar")]) == [
        "CommandError: There is nothing to back up: nobody has an account. "
        "Are DATA_DIR and DATABASE_URL those of the site?"
    ]
    assert told(site, ["manage.py", "summaries"]) == [
        "The database has not been prepared for this version: run manage.py migrate."
    ]


def test_file_that_is_no_database_is_told(site: Site) -> None:
    site.database.write_text("a letter " * 200)

    assert told(site, ["manage.py", "migrate"]) == [
        f"The file {site.database} is no database. Restore a backup."
    ]


@pytest.mark.parametrize("command", [START, SERVE, ["manage.py", "migrate"]], ids=lambda c: c[-1])
def test_folder_that_can_only_be_read_is_told(tmp_path: Path, command: list[str]) -> None:
    with small_disk(tmp_path / "disk", 1) as disk:
        make_read_only(disk)
        [sentence] = told(Site(disk, variables={"PORT": "0"}), command)

    assert str(disk) in sentence
    assert "DATA_DIR" in sentence


@pytest.mark.parametrize(
    "command",
    [START, ["manage.py", "migrate"], ["manage.py", "restore", str(QUAY_STREET)]],
    ids=["start", "migrate", "restore"],
)
def test_full_disk_is_told(tmp_path: Path, command: list[str]) -> None:
    with small_disk(tmp_path / "disk", 1) as disk:
        fill(disk)

        assert told(Site(disk, variables={"PORT": "0"}), command) == [NO_SPACE]


def test_full_disk_of_a_site_is_told(tmp_path: Path) -> None:
    with small_disk(tmp_path / "disk", 64) as disk:
        site = quay_street(disk / "data")
        fill(disk)

        assert told(site, ["manage.py", "tidy"]) == [NO_SPACE]


def test_backup_to_a_full_disk_is_told_and_leaves_nothing(tmp_path: Path) -> None:
    site = quay_street(tmp_path / "data")
    with small_disk(tmp_path / "disk", 8) as disk:
        backup = str(disk / "backup.tar")

        assert told(site, ["manage.py", "backup", backup]) == [NO_SPACE]
        assert [*disk.iterdir()] == []
