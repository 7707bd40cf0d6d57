"""A round of housekeeping: what it does, once a day, by one process alone."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from django.contrib.sessions.models import Session
from django.db import OperationalError
from django.utils import timezone
from pytest_django import Settings

from course.cohorts.archiving import archive
from course.cohorts.models import Cohort, Person
from course.cohorts.roster.upload import RosterUpload
from exercises.housekeeping import rounds
from exercises.housekeeping.chores import CHORES
from exercises.housekeeping.rounds import alone, round_if_due

pytestmark = pytest.mark.django_db

NOON = datetime(2033, 6, 14, 11, tzinfo=UTC)  # 12:00 in London


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, settings: Settings) -> Path:
    settings.DATA_DIR = tmp_path
    settings.PICTURES_DIR = tmp_path / "pictures"
    made = {"LOCATION": tmp_path / "made", "OPTIONS": {"LIMIT": 100}}
    settings.CACHES = {**settings.CACHES, "made": {**settings.CACHES["made"], **made}}
    (tmp_path / "made").mkdir()
    return tmp_path


def said(now: datetime = NOON) -> list[str] | None:
    """What a round says that it did; None where none was due."""
    sentences: list[str] = []
    return sentences if round_if_due(sentences.append, now=now) else None


def test_everything_that_has_had_its_day_goes(ines: Person, harbour: Cohort, folder: Path) -> None:
    archive(ines, harbour, timezone.localdate(NOON))
    RosterUpload.objects.create(person=ines, text="a,b", at=NOON - timedelta(days=2))
    for key, day in {"ended": -1, "goes on": 1, "dated ahead": 3650}.items():
        Session.objects.create(session_key=key, expire_date=NOON + timedelta(days=day))
    (folder / "pictures").mkdir()
    (folder / "pictures" / "stray.jpg").touch()
    for name in "ab":
        (folder / "made" / name).write_bytes(b"x" * 80)

    assert said() == [
        "Removed: Harbour group",
        "Pictures without an answer, removed: 1",
        "Sign-ins that have ended, removed: 2",
        "Made pictures and sounds over the limit, removed: 1",
    ]
    assert not Cohort.objects.exists()
    assert not RosterUpload.objects.exists()
    assert [session.session_key for session in Session.objects.all()] == ["goes on"]


def test_round_is_done_once_a_day() -> None:
    """By the workshop’s own day: in June, midnight in London is 23:00 UTC."""
    hours = [said(NOON + timedelta(hours=hour)) is not None for hour in range(26)]

    assert [hour for hour, done in enumerate(hours) if done] == [0, 12]


def test_clock_that_was_ahead_does_not_put_it_off() -> None:
    assert said(NOON + timedelta(days=3650)) == []
    assert said(NOON) == []
    assert said(NOON) is None


def test_another_process_does_not_do_it_too() -> None:
    with alone():
        assert said() is None

    assert said() == []


@pytest.mark.parametrize("written", ["", "yesterday\n", "\0\0\0"])
def test_time_that_can_not_be_read_is_none(folder: Path, written: str) -> None:
    (folder / "housekeeping").write_text(written)

    assert said() == []
    assert (folder / "housekeeping").read_text() == f"{NOON.isoformat()}\n"


def test_chore_that_fails_hinders_no_other(
    monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def broken(now: datetime) -> Iterator[str]:
        raise KeyError(now)
        yield ""

    monkeypatch.setattr(rounds, "CHORES", (broken, *CHORES))
    Session.objects.create(session_key="ended", expire_date=NOON - timedelta(days=1))

    assert said() == ["Sign-ins that have ended, removed: 1"]
    assert "broken failed, and is tried again tomorrow" in caplog.text
    assert said() is None


def test_database_that_goes_away_leaves_the_round_due(monkeypatch: pytest.MonkeyPatch) -> None:
    def away(now: datetime) -> Iterator[str]:
        raise OperationalError("the connection is closed")
        yield ""

    with monkeypatch.context() as outage:
        outage.setattr(rounds, "CHORES", (*CHORES, away))
        with pytest.raises(OperationalError):
            said()

    assert said() == []


def test_round_that_is_broken_off_is_due_again() -> None:
    assert not round_if_due(print, now=NOON, going=lambda: False)
    assert said() == []
