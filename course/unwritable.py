"""A disk that is full or can only be read: pages go on being read, what can't be kept is told."""

import errno
import logging
import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from django.conf import settings
from django.contrib.sessions.middleware import SessionMiddleware
from django.db import DatabaseError
from django.http import HttpRequest, HttpResponse

logger = logging.getLogger(__name__)

SAFE = {"GET", "HEAD", "OPTIONS", "TRACE"}
OF_THE_DISK = {errno.ENOSPC, errno.EDQUOT, errno.EROFS}
OF_POSTGRESQL = {"53100", "25006"}  # its disk is full; it takes no changes
OF_SQLITE = {sqlite3.SQLITE_FULL, sqlite3.SQLITE_READONLY}
LEAST = 1 << 16  # bytes; with less room SQLite says this and that, but not that the disk is full


def is_unwritable(error: BaseException | None) -> bool:
    """Does the error, or what led to it, say that nothing can be kept just now?"""
    return any(says_so(each) for each in causes_of(error))


def says_so(error: BaseException) -> bool:
    if isinstance(error, sqlite3.Error):
        return kind_of(error) in OF_SQLITE or (kind_of(error) != sqlite3.SQLITE_ERROR and no_room())
    if isinstance(error, OSError):
        return error.errno in OF_THE_DISK
    return getattr(error, "sqlstate", None) in OF_POSTGRESQL


def kind_of(error: sqlite3.Error) -> int:
    """The kind that SQLite gives it; the byte above it is more exact, as in IOERR_WRITE."""
    return getattr(error, "sqlite_errorcode", sqlite3.SQLITE_ERROR) & 0xFF


def no_room() -> bool:
    """Is the disk of DATA_DIR full?"""
    folder = Path(settings.DATA_DIR)
    return folder.is_dir() and shutil.disk_usage(folder).free < LEAST


def causes_of(error: BaseException | None) -> Iterator[BaseException]:
    """The error, what led to it, what led to that."""
    while error:
        yield error
        error = error.__cause__ or error.__context__


@contextmanager
def where_it_can_be_kept() -> Iterator[None]:
    """Around a write that a page does without: where nothing can be kept, it is left out."""
    try:
        yield
    except (DatabaseError, OSError) as error:
        if not is_unwritable(error):
            raise
        logger.warning("Left out, since nothing can be kept: %s", error)


class Sessions(SessionMiddleware):
    """Django's own; a page that was only read is sent also where its session can't be kept."""

    def process_response(self, request: HttpRequest, response: HttpResponse) -> HttpResponse:
        if request.method not in SAFE:
            return super().process_response(request, response)
        with where_it_can_be_kept():
            return super().process_response(request, response)
        return response
