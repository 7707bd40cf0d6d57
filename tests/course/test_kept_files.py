"""Made pictures in files: within the limit, the oldest used gone first."""

import os
import time
from pathlib import Path

from django.conf import settings as django_settings
from django.core.cache import caches

from course.kept_files import KeptFiles

KB = os.urandom(1000)  # can't be pressed into less


def cache(folder: Path, limit: int) -> KeptFiles:
    return KeptFiles(str(folder), {"TIMEOUT": None, "OPTIONS": {"LIMIT": limit}})


def used(kept: KeptFiles, name: str, hours_ago: float) -> None:
    at = time.time() - 3600 * hours_ago
    os.utime(kept.path_of(name), (at, at))


def there(kept: KeptFiles, names: str) -> str:
    return "".join(name for name in names if kept.has_key(name))


def size(folder: Path) -> int:
    return sum(path.stat().st_size for path in folder.iterdir())


def test_oldest_used_go_first_until_there_is_room(tmp_path: Path) -> None:
    kept = cache(tmp_path, 10**6)
    for hours, name in enumerate("abcdefgh"):
        kept.set(name, KB)
        used(kept, name, hours)
    kept.get("h")
    kept.limit = 5000

    assert kept.trim() == 4
    assert there(kept, "abcdefgh") == "abch"
    assert kept.trim() == 0


def test_writing_keeps_to_the_limit_by_itself(tmp_path: Path) -> None:
    kept = cache(tmp_path, 50_000)
    for number in range(200):
        kept.set(str(number), KB)

        assert size(tmp_path) < 53_000

    assert kept.get("199") == KB


def test_several_processes_keep_to_it_together(tmp_path: Path) -> None:
    workers = [cache(tmp_path, 50_000) for _ in range(3)]
    for number in range(300):
        workers[number % 3].set(str(number), KB)

    assert size(tmp_path) < 56_000


def test_what_was_never_finished_goes_too(tmp_path: Path) -> None:
    kept = cache(tmp_path, 5000)
    (tmp_path / "tmpabc").write_bytes(KB * 6)
    kept.set("a", KB)

    assert [path.suffix for path in tmp_path.iterdir()] == [".djcache"]


def test_number_of_files_is_no_matter(tmp_path: Path) -> None:
    kept = cache(tmp_path, 10**8)
    for number in range(400):  # Django's own would keep 300
        kept.set(str(number), b"")

    assert len(list(tmp_path.iterdir())) == 400


def test_site_has_its_limit_from_the_setting() -> None:
    made = caches["made"]

    assert isinstance(made, KeptFiles)
    assert made.limit == django_settings.MADE_LIMIT_MB * 1_000_000
