"""How many answers a minute are taken from one person: far more than anybody reads questions."""

from collections.abc import Sequence
from datetime import datetime

from django.conf import settings

from exercises.models import Asked
from exercises.standing.working_out import MINUTE


class TooFastError(Exception):
    """So many answers within a minute; `until` says when the next one is taken."""

    def __init__(self, until: datetime) -> None:
        super().__init__(f"Too many answers until {until:%F %T}.")
        self.until = until


def refuse_haste(asked: Asked, given: Sequence[datetime], now: datetime) -> None:
    """Raises `TooFastError` after a minute's answers; `given` is when, the last answer first.

    One that is sent a second time is no further answer. Answers are in their order whatever the
    clock did; what it dated into the future holds nobody up.
    """
    most = settings.ANSWERS_A_MINUTE
    for answered_at in given[most - 1 : most]:
        if answered_at <= now < answered_at + MINUTE and not hasattr(asked, "attempt"):
            raise TooFastError(answered_at + MINUTE)
