"""A round of all chores, once a day, by one process alone.

The file `housekeeping` in DATA_DIR has the time of the last round. Whoever does one holds a lock
on it, which ends with the process, however that ends.
"""

import fcntl
import logging
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date, datetime
from pathlib import Path
from typing import IO

from django.conf import settings
from django.db import InterfaceError, OperationalError, ProgrammingError
from django.utils import timezone

from exercises.housekeeping.chores import CHORES

# The database is away, or not prepared yet.
AWAY = (OperationalError, InterfaceError, ProgrammingError)

logger = logging.getLogger(__name__)


def round_if_due(
    say: Callable[[str], object], *, now: datetime, going: Callable[[], bool] = lambda: True
) -> bool:
    """Do what is to be done today, unless it was done, or another process is at it.

    True where a round was done. It is not, and is due again, where `going` says no between
    two chores, or where it raises one of AWAY.
    """
    with alone() as mark:
        if mark is None or day_of(mark) == timezone.localdate(now):
            return False
        for chore in CHORES:
            if not going():
                return False
            do(chore, say, now)
        note(mark, now)
        return True


@contextmanager
def alone() -> Iterator[IO[str] | None]:
    """The file, where no other process holds it."""
    path = Path(settings.DATA_DIR) / "housekeeping"
    with path.open("a+", encoding="ascii") as mark:
        try:
            fcntl.flock(mark, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            yield None
        else:
            yield mark


def day_of(mark: IO[str]) -> date | None:
    """The day of the last round, here; None where there was none.

    Only today's counts as done: a clock that was ahead for an hour does no harm.
    """
    mark.seek(0)
    try:
        return timezone.localdate(datetime.fromisoformat(mark.read().strip()))
    except ValueError:
        return None


def note(mark: IO[str], now: datetime) -> None:
    mark.seek(0)
    mark.truncate()
    mark.write(f"{now.isoformat()}\n")


def do(
    chore: Callable[[datetime], Iterator[str]], say: Callable[[str], object], now: datetime
) -> None:
    """What goes wrong with one chore hinders no other."""
    try:
        for said in chore(now):
            say(said)
    except AWAY:
        raise
    except Exception:
        logger.exception("Housekeeping: %s failed, and is tried again tomorrow.", chore.__name__)
