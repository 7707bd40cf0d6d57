"""What `manage.py migrate` brings in step with this version, besides the tables."""

import sys
from typing import Any, TextIO

from django.db import DEFAULT_DB_ALIAS

from course.unprepared import is_unprepared
from exercises.standing.summaries import outdated, rebuild


def upgrade(
    *, using: str, verbosity: int, plan: object = None, stdout: TextIO = sys.stdout, **_: Any
) -> None:
    """Work out again the summaries that go by other rules than this version's.

    Each is a transaction of its own, so the site may be in use, and migrating again goes on where
    it was cut off. Nothing happens where a database is only emptied (there is no plan), is being
    moved to, or stays at an earlier version's tables.
    """
    if plan is None or using != DEFAULT_DB_ALIAS or is_unprepared():
        return
    made = rebuild(outdated())
    if made and verbosity:
        stdout.write(f"Summaries of answers made anew: {made}.\n")
