"""What can't be kept is told, and what was typed comes back; what is only read is sent."""

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from io import BytesIO
from pathlib import Path

import psycopg
import pytest
from django.contrib.sessions.backends.db import SessionStore
from django.core.files.uploadhandler import FileUploadHandler
from django.db import DatabaseError, connection
from django.http import HttpResponse
from django.test import Client, RequestFactory
from django.urls import reverse
from pytest_django import Settings

from course.cohorts.models import Cohort, Person
from course.unwritable import Sessions, is_unwritable, where_it_can_be_kept
from exercises.drills.register import KINDS
from exercises.models import Attempt
from exercises.practice.attempts import ask
from tests.disks import fill, small_disk
from tests.own import published
from tests.pages import heading, texts
from tests.photographs import file_of, leads

ClientOf = Callable[[Person], Client]
HEADING = "Nothing can be kept just now"
# More than a page of the database, as JSON writes such letters.
TYPED = "Fähre über Öl, „Brücke“ – Übergänge: ÄÖÜ äöü ß. " * 35

sqlite_only = pytest.mark.skipif(
    connection.vendor != "sqlite", reason="PostgreSQL's disk is not the site's to fill"
)


@contextmanager
def no_more_pages() -> Iterator[None]:
    """A database file that can't grow: SQLite then says that the disk is full."""
    with connection.cursor() as cursor:
        cursor.execute("VACUUM")
        cursor.execute("PRAGMA page_count")
        cursor.execute(f"PRAGMA max_page_count = {cursor.fetchone()[0]}")
        try:
            yield
        finally:
            cursor.execute("PRAGMA max_page_count = 4294967294")


@pytest.fixture
def hers(mina: Person, client_of: ClientOf) -> Client:
    """Mina's browser, which shows pages of faults as a browser does."""
    client = client_of(mina)
    client.raise_request_exception = False
    return client


@sqlite_only
@pytest.mark.django_db(transaction=True)
def test_answer_comes_back_and_is_taken_once_there_is_room(hers: Client, mina: Person) -> None:
    asked = ask(mina, KINDS["free-answer"])
    [field] = [each.name for each in asked.as_question().asks]
    url = reverse("drill-answer", args=[asked.token])
    with no_more_pages():
        refused = hers.post(url, {field: TYPED})
        shown = hers.get(asked.page())
    taken = hers.post(url, {field: TYPED})

    assert (refused.status_code, heading(refused)) == (503, HEADING)
    assert f'name="{field}" value="{TYPED}"' in refused.content.decode()
    assert texts(refused, "button") == ["Send it again"]
    assert (shown.status_code, taken.status_code) == (200, 302)
    assert Attempt.objects.get().answer == {field: TYPED.strip()}


def test_picture_that_can_not_be_kept_is_asked_for_again(
    hers: Client, mina: Person, ines: Person, harbour: Cohort, settings: Settings, tmp_path: Path
) -> None:
    asked = ask(mina, published(ines, harbour, form="picture").kind)
    url = reverse("drill-answer", args=[asked.token])
    with small_disk(tmp_path / "disk", 1) as disk:
        fill(disk)
        settings.PICTURES_DIR = disk / "pictures"
        refused = hers.post(url, {"picture": BytesIO(file_of(leads((600, 400))))})
        left = [path.name for path in disk.rglob("*.*")]

    assert (refused.status_code, heading(refused)) == (503, HEADING)
    assert "Choose the file again" in refused.content.decode()
    assert (left, Attempt.objects.count()) == ([], 0)


class NoRoom(FileUploadHandler):
    """What Django does with a large file where the disk for temporary files is full."""

    def receive_data_chunk(self, raw_data: bytes, start: int) -> bytes | None:
        Path("/dev/full").write_bytes(raw_data)
        return None

    def file_complete(self, file_size: int) -> None:
        """Never reached."""


def test_large_file_that_finds_no_room_on_its_way_is_told(
    hers: Client, mina: Person, ines: Person, harbour: Cohort, settings: Settings
) -> None:
    asked = ask(mina, published(ines, harbour, form="picture").kind)
    settings.FILE_UPLOAD_HANDLERS = [f"{__name__}.NoRoom"]
    url = reverse("drill-answer", args=[asked.token])
    refused = hers.post(url, {"picture": BytesIO(file_of(leads((600, 400))))})

    assert (refused.status_code, heading(refused)) == (503, HEADING)


def read_only() -> None:
    """Leave the database to be read; undone when the connection is closed."""
    with connection.cursor() as cursor:
        if connection.vendor == "sqlite":
            cursor.execute("PRAGMA query_only = ON")
        else:
            cursor.execute("SET default_transaction_read_only = ON")


@pytest.mark.django_db(transaction=True)
@pytest.mark.parametrize("method", ["GET", "POST"])
def test_session_that_can_not_be_kept_spoils_no_reading(method: str) -> None:
    request = RequestFactory().generic(method, "/")
    request.session = SessionStore()
    request.session["seen"] = "the tour"
    page = HttpResponse("the page")
    read_only()
    try:
        if method == "GET":
            assert Sessions(lambda _: page).process_response(request, page) is page
        else:
            with pytest.raises(DatabaseError):
                Sessions(lambda _: page).process_response(request, page)
    finally:
        connection.close()


def raised(act: Callable[[], object]) -> BaseException:
    with pytest.raises(Exception) as found:  # noqa: PT011 - whatever it is
        act()
    return found.value


def in_sqlite(*statements: str) -> BaseException:
    def act() -> None:
        with closing(sqlite3.connect(":memory:")) as database:
            for statement in statements:
                database.execute(statement)

    return raised(act)


FILLED = ("PRAGMA max_page_count = 2", "CREATE TABLE a (b)", "CREATE TABLE c (d)")
READ_ONLY = ("PRAGMA query_only = ON", "CREATE TABLE a (b)")


@pytest.mark.parametrize(
    ("error", "meant"),
    [
        (lambda: in_sqlite(*FILLED), True),
        (lambda: in_sqlite(*READ_ONLY), True),
        (lambda: in_sqlite("SELECT * FROM nowhere"), False),
        (lambda: raised(lambda: Path("/dev/full").write_text("x")), True),
        (lambda: raised(lambda: Path("/nowhere/at/all").write_text("x")), False),
        (psycopg.errors.DiskFull, True),
        (psycopg.errors.ReadOnlySqlTransaction, True),
        (psycopg.errors.UniqueViolation, False),
        (ValueError, False),
    ],
)
def test_which_errors_say_that_nothing_can_be_kept(
    error: Callable[[], BaseException], meant: bool
) -> None:
    assert is_unwritable(error()) is meant


def test_only_such_errors_are_let_pass() -> None:
    with where_it_can_be_kept():
        Path("/dev/full").write_text("x")
    with pytest.raises(FileNotFoundError), where_it_can_be_kept():
        Path("/nowhere/at/all").write_text("x")
