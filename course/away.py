"""What is answered while the database is away or nothing can be kept: when to come back.

The page needs no database. It holds what was sent, so that it can be sent again.
"""

import logging
import sqlite3
import sys

from django.db import InterfaceError, OperationalError
from django.http import HttpRequest, HttpResponse
from django.template.loader import get_template
from django.views import defaults

from course.middleware import NO_STORE
from course.unwritable import is_unwritable, kind_of

SOON = 5  # seconds
# What SQLite says of its file and its locks; the rest of its errors are faults of the site's own.
OUT_OF_REACH = {
    sqlite3.SQLITE_BUSY,
    sqlite3.SQLITE_LOCKED,
    sqlite3.SQLITE_IOERR,
    sqlite3.SQLITE_CANTOPEN,
    sqlite3.SQLITE_PROTOCOL,
}


def server_error(request: HttpRequest) -> HttpResponse:
    """The page of a fault; of a wait, where the database is away or nothing can be kept."""
    error = sys.exception()
    full = is_unwritable(error)
    return wait(request, full=full) if full or is_away(error) else defaults.server_error(request)


def is_away(error: BaseException | None) -> bool:
    if not isinstance(error, OperationalError | InterfaceError):
        return False
    cause = error.__cause__
    if isinstance(cause, sqlite3.Error):
        return kind_of(cause) in OUT_OF_REACH
    return True


def wait(request: HttpRequest, *, full: bool) -> HttpResponse:
    context = {"path": path_back(request), "fields": fields_to_send(request), "full": full}
    context["files"] = request.content_type == "multipart/form-data"
    response = HttpResponse(get_template("503.html").render(context), status=503)
    response.headers["Retry-After"] = str(SOON)
    response.headers["Cache-Control"] = NO_STORE
    return response


def path_back(request: HttpRequest) -> str:
    return request.get_full_path() if request.method in {"GET", "HEAD"} else request.path


def fields_to_send(request: HttpRequest) -> list[tuple[str, str]]:
    """What was sent by POST, to be sent again but for files; nothing with a password in it."""
    try:
        lists = list(request.POST.lists())
    except OSError:  # a file that found no room on its way has ended the reading
        return []
    if any("password" in name for name, _ in lists):
        return []
    return [(name, value) for name, values in lists for value in values]


def without_trace(record: logging.LogRecord) -> bool:
    """A filter for the log: one line a request is enough to know that the database is away."""
    if getattr(record, "status_code", 0) == 503:
        record.exc_info = None
    return True
