"""What the site keeps is for its own account alone, however it was left."""

import os
import stat
from collections.abc import Iterator
from pathlib import Path

import pytest
from pytest_django import Settings

from course.data_dir import close_to_others, is_shared
from tests.quay_street import quay_street
from tests.served import Visitor, served
from tests.sites import Site


@pytest.fixture(autouse=True)
def usual_umask() -> Iterator[None]:
    before = os.umask(0o022)
    yield
    os.umask(before)


def mode(path: Path) -> str:
    return oct(stat.S_IMODE(path.stat().st_mode))


def modes(folder: Path, *names: str) -> dict[str, str]:
    return {name: mode(folder / name) for name in names}


def test_new_site_is_closed(tmp_path: Path) -> None:
    site = Site(tmp_path / "data")
    site.data.mkdir()
    site.manage("migrate", "contenttypes", "--verbosity=0", "--skip-checks")

    assert (mode(site.data), mode(site.database)) == ("0o700", "0o600")


def test_site_that_was_left_open_is_closed_by_any_command(tmp_path: Path) -> None:
    site = quay_street(tmp_path / "data")
    names = ("run-up.sqlite3", "secret-key", "pictures")
    pictures = [f"pictures/{path.name}" for path in (site.data / "pictures").iterdir()]
    for path in (site.data, *site.data.rglob("*")):
        path.chmod(0o755 if path.is_dir() else 0o644)
    site.manage("diffsettings")

    assert mode(site.data) == "0o700"
    assert modes(site.data, *names) == dict(zip(names, ("0o600", "0o600", "0o700"), strict=True))
    assert modes(site.data, *pictures) == dict.fromkeys(pictures, "0o600")


def test_files_beside_the_database_are_closed_while_it_is_served(tmp_path: Path) -> None:
    site = quay_street(tmp_path / "data")
    with served(site) as address:
        assert Visitor(address).sign_in("wren").status == 200
        beside = ("run-up.sqlite3", "run-up.sqlite3-wal", "run-up.sqlite3-shm")

        assert modes(site.data, *beside) == dict.fromkeys(beside, "0o600")


def test_database_elsewhere_is_closed_too(tmp_path: Path) -> None:
    elsewhere = tmp_path / "elsewhere.sqlite3"
    site = Site(tmp_path / "data", f"sqlite:///{elsewhere}")
    site.data.mkdir()
    site.manage("migrate", "contenttypes", "--verbosity=0", "--skip-checks")

    assert mode(elsewhere) == "0o600"


def test_folder_of_everybody_stays_open_and_its_secrets_are_closed(
    tmp_path: Path, settings: Settings
) -> None:
    tmp_path.chmod(0o1777)
    key = tmp_path / "secret-key"
    key.write_text("k" * 50)
    settings.DATA_DIR, settings.KEPT_KEY = tmp_path, key
    close_to_others()

    assert (mode(tmp_path), mode(key)) == ("0o1777", "0o600")


def test_folder_above_the_code_is_shared(settings: Settings, tmp_path: Path) -> None:
    code = Path(settings.BASE_DIR)

    assert [is_shared(each) for each in (code, code.parent, Path("/"), tmp_path)] == [
        True,
        True,
        True,
        False,
    ]


@pytest.mark.skipif(os.geteuid() != 0, reason="only root gives files to others")
def test_folder_with_other_peoples_files_is_shared(tmp_path: Path) -> None:
    (tmp_path / "theirs").mkdir()
    os.chown(tmp_path / "theirs", 12345, 12345)

    assert is_shared(tmp_path)


def test_folder_that_nobody_writes_to_is_left_open(tmp_path: Path) -> None:
    """Such as /proc, to root."""
    tmp_path.chmod(0o555)

    assert is_shared(tmp_path)
    tmp_path.chmod(0o755)
    assert not is_shared(tmp_path)
