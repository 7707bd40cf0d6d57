"""The database is away: a sentence, when to come back, and nothing that was typed is lost."""

import logging
import sqlite3
from collections.abc import Callable, Iterator
from typing import Any

import pytest
from django.db import DatabaseError, InterfaceError, OperationalError, connection
from django.test import Client
from django.urls import reverse

from course.away import is_away, without_trace
from course.cohorts.models import Person
from course.lessons.shelf import shelf
from exercises.drills.register import KINDS
from exercises.models import Attempt
from exercises.practice.attempts import ask
from tests.pages import heading, texts

ClientOf = Callable[[Person], Client]
HEADING = "Back in a moment"
TYPED = 'An "insert" <of picture>, since the control track goes on.'


def refuse(*_: Any) -> None:
    """What every query does when the server has gone."""
    raise OperationalError("server closed the connection unexpectedly")


@pytest.fixture
def away() -> Iterator[None]:
    with connection.execute_wrapper(refuse):
        yield


@pytest.fixture
def hers(mina: Person, client_of: ClientOf) -> Client:
    """Mina's browser, which shows pages of faults as a browser does."""
    client = client_of(mina)
    client.raise_request_exception = False
    return client


@pytest.mark.parametrize("path", ["/", "/record/?page=2", "/no/such/page/", "/admin/"])
def test_page_says_so_and_when_to_come_back(hers: Client, path: str, away: None) -> None:
    page = hers.get(path)

    assert (page.status_code, heading(page)) == (503, HEADING)
    assert (page.headers["Retry-After"], page.headers["Cache-Control"]) == (
        "5",
        "private, no-store",
    )
    assert f'<a class="button" href="{path}">Try again</a>' in page.content.decode()


def test_fragment_gets_the_whole_page(hers: Client, away: None) -> None:
    headers = {"hx-request": "true"}
    page = hers.post(reverse("drill-ask", args=["choose-the-mode"]), headers=headers)

    assert (page.status_code, heading(page)) == (503, HEADING)
    assert page.headers["HX-Retarget"] == "body"


def test_lessons_picture_needs_no_database(hers: Client, away: None) -> None:
    shown = reverse("lesson-shown", args=[next(iter(shelf().media))])

    assert hers.get(shown).status_code == 200


def test_page_sends_again_what_was_typed(hers: Client, mina: Person) -> None:
    asked = ask(mina, KINDS["free-answer"])
    url = reverse("drill-answer", args=[asked.token])
    with connection.execute_wrapper(refuse):
        page = hers.post(url, {"text": TYPED, "several": ["one", "two"]})

    source = page.content.decode()
    assert (page.status_code, Attempt.objects.count()) == (503, 0)
    assert f'<form method="post" action="{url}">' in source
    assert 'value="An &quot;insert&quot; &lt;of picture&gt;, since the control' in source
    assert source.count('name="several"') == 2
    assert texts(page, "button") == ["Send it again"]


@pytest.mark.parametrize("name", ["password", "new_password", "current_password"])
def test_page_never_holds_a_password(client: Client, db: None, name: str) -> None:
    client.raise_request_exception = False
    with connection.execute_wrapper(refuse):
        fields = {"sign_in_name": "mina", "password": "x", name: "pulses-in-phase"}
        page = client.post(reverse("sign-in"), fields)

    assert (page.status_code, b"pulses-in-phase" in page.content) == (503, False)


def test_fault_of_the_site_is_still_a_fault(hers: Client) -> None:
    def break_down(*_: Any) -> None:
        raise ZeroDivisionError

    with connection.execute_wrapper(break_down):
        page = hers.get("/")

    assert (page.status_code, heading(page)) == (500, "Something went wrong")


def failed_in_sqlite(code: int) -> OperationalError:
    cause = sqlite3.OperationalError()
    cause.sqlite_errorcode = code
    error = OperationalError()
    error.__cause__ = cause
    return error


@pytest.mark.parametrize(
    ("error", "away"),
    [
        (OperationalError("the connection is lost"), True),
        (InterfaceError("connection already closed"), True),
        (failed_in_sqlite(sqlite3.SQLITE_BUSY), True),
        (failed_in_sqlite(sqlite3.SQLITE_IOERR_WRITE), True),
        (failed_in_sqlite(sqlite3.SQLITE_ERROR), False),
        (DatabaseError("a mistake in a query"), False),
        (ValueError(), False),
        (None, False),
    ],
    ids=repr,
)
def test_which_errors_say_that_it_is_away(error: Exception | None, away: bool) -> None:
    assert is_away(error) is away


def test_missing_table_is_a_fault(db: None) -> None:
    with pytest.raises(DatabaseError) as found, connection.cursor() as cursor:
        cursor.execute("SELECT * FROM no_such_table")

    assert not is_away(found.value)


@pytest.mark.parametrize(("status", "kept"), [(503, False), (500, True)])
def test_log_has_one_line_for_each_request_meanwhile(status: int, kept: bool) -> None:
    record = logging.LogRecord("django.request", logging.ERROR, "", 1, "", None, (None,) * 3)
    record.status_code = status

    assert (without_trace(record), record.exc_info is not None) == (True, kept)
