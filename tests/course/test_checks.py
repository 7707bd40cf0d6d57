"""Mistakes of an operator are told, each once, by its id."""

from pathlib import Path

import pytest
from django.conf import settings as site_settings
from django.core.checks import CheckMessage, Tags, run_checks
from pytest_django import Settings

from course.checks import OF_AN_OPERATOR

SAFE = {"HTTPS": True, "PROXIES": 1, "ALLOWED_HOSTS": ["run-up.example"]}


@pytest.fixture
def safe(settings: Settings) -> Settings:
    for name, value in SAFE.items():
        setattr(settings, name, value)
    return settings


def told() -> list[CheckMessage]:
    """What this project's own checks say."""
    tags = [*OF_AN_OPERATOR, Tags.staticfiles]
    messages = run_checks(tags=tags, include_deployment_checks=True)
    return [message for message in messages if str(message.id).startswith("course.")]


def ids() -> list[str | None]:
    return [message.id for message in told()]


def test_safe_settings_leave_nothing_to_say(safe: Settings) -> None:
    assert told() == []


@pytest.mark.parametrize("key", ["", "short", "x" * 49])
def test_key_that_is_missing_or_short_is_told(safe: Settings, key: str) -> None:
    safe.SECRET_KEY = key

    assert ids() == ["course.E001"]


def test_short_key_is_fine_for_debugging(safe: Settings) -> None:
    safe.SECRET_KEY, safe.DEBUG = "short", True

    assert ids() == []


@pytest.mark.parametrize("limit", [0, -5])
def test_no_room_for_made_pictures_is_told(safe: Settings, limit: int) -> None:
    safe.MADE_LIMIT_MB = limit

    assert ids() == ["course.E006"]


def test_data_dir_that_is_missing_is_told(safe: Settings, tmp_path: Path) -> None:
    safe.DATA_DIR = tmp_path / "nowhere"

    assert ids() == ["course.E002"]


def test_data_dir_that_is_a_file_is_told(safe: Settings, tmp_path: Path) -> None:
    safe.DATA_DIR = tmp_path / "file"
    safe.DATA_DIR.write_text("")

    assert ids() == ["course.E002"]


def test_data_dir_that_is_not_writable_is_told(
    safe: Settings, monkeypatch: pytest.MonkeyPatch
) -> None:
    # The superuser may write anywhere, so the system's answer is set here.
    monkeypatch.setattr("os.access", lambda path, mode: False)

    assert ids() == ["course.E002"]


def test_cache_without_its_package_is_told(safe: Settings, monkeypatch: pytest.MonkeyPatch) -> None:
    safe.CACHES = {"default": {"BACKEND": "django.core.cache.backends.redis.RedisCache"}}
    monkeypatch.setattr("course.checks.find_spec", lambda name: None)

    assert ids() == ["course.E004"]


def test_https_without_a_proxy_is_told(safe: Settings) -> None:
    safe.PROXIES = 0

    assert ids() == ["course.W001"]


def test_plain_http_needs_no_proxy(safe: Settings) -> None:
    safe.HTTPS, safe.PROXIES = False, 0

    assert ids() == []


def test_any_host_is_told(safe: Settings) -> None:
    safe.ALLOWED_HOSTS = ["*"]

    assert ids() == ["course.W002"]


def test_static_files_that_were_not_collected_are_told(safe: Settings, tmp_path: Path) -> None:
    safe.STATIC_ROOT = tmp_path
    manifest = "whitenoise.storage.CompressedManifestStaticFilesStorage"
    safe.STORAGES = {**site_settings.STORAGES, "staticfiles": {"BACKEND": manifest}}

    assert ids() == ["course.W003"]


def test_folder_that_others_can_look_into_is_told(safe: Settings, tmp_path: Path) -> None:
    safe.DATA_DIR = tmp_path
    tmp_path.chmod(0o750)

    assert ids() == ["course.W004"]


def test_hints_name_a_section_of_the_readme(safe: Settings, tmp_path: Path) -> None:
    safe.SECRET_KEY, safe.DATA_DIR, safe.PROXIES = "", tmp_path / "nowhere", 0
    safe.ALLOWED_HOSTS = ["*"]
    readme = (site_settings.BASE_DIR / "README.md").read_text()

    sections = {str(message.hint).split("“")[1].split("”")[0] for message in told()}
    assert sections == {"Configuration", "On a server"}
    assert [f"## {section}\n" in readme for section in sorted(sections)] == [True, True]
