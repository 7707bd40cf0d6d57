"""How many answers a minute are taken from one person: far more than anybody reads questions."""

from collections.abc import Sequence
from datetime import datetime

from django.conf import settings

from exercises.standing.working_out import MINUTE


class TooFastError(Exception):
    """So many answers within a minute; `until` says when the next one is taken."""

    def __init__(self, until: datetime) -> None:
        super().__init__(f"Too many answers until {until:%F %T}.")
        self.until = until


def refuse_haste(given: Sequence[datetime], now: datetime) -> None:
    """Raises `TooFastError` after a minute's answers; `given` is when, the last answer first.

    Answers are in their order whatever the clock did; what it dated into the future holds nobody
    up.
    """
    most = settings.ANSWERS_A_MINUTE
    for answered_at in given[most - 1 : most]:
        if answered_at <= now < answered_at + MINUTE:
            raise TooFastError(answered_at + MINUTE)
