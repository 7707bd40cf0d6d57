"""Looking, every few minutes, whether a round is due."""

import logging
import os
import time
from collections.abc import Callable
from threading import Event

from django.db import Error, connections
from django.utils import timezone

from exercises.housekeeping.rounds import round_if_due

EVERY = 300  # seconds
BREATH = 0.5  # seconds, until it is seen that the site has ended

logger = logging.getLogger(__name__)


def watch(
    over: Event, say: Callable[[str], object], *, site: int | None = None, every: float = EVERY
) -> None:
    """Go on until it is `over`, or the process `site`, which has started this one, has ended."""
    while not over.is_set():
        look(over, say)
        wait(over, site, every)


def look(over: Event, say: Callable[[str], object]) -> None:
    """A database that is away, or a full disk, is for the next look."""
    try:
        round_if_due(say, now=timezone.now(), going=lambda: not over.is_set())
    except (Error, OSError) as error:
        reason = str(error).strip().partition("\n")[0]
        logger.warning("Housekeeping waits: %s", reason)
    finally:
        let_go()


def let_go() -> None:
    """Hold no connection until the next look."""
    for connection in connections.all(initialized_only=True):
        connection.close()


def wait(over: Event, site: int | None, seconds: float) -> None:
    until = time.monotonic() + seconds
    while time.monotonic() < until and not over.wait(BREATH):
        if site and os.getppid() != site:
            over.set()
