"""How many answers a minute are taken from one person: far more than anybody reads questions."""

from datetime import datetime, timedelta

from django.conf import settings
from django.utils import timezone

from exercises.models import Asked, Attempt

MINUTE = timedelta(minutes=1)


class TooFastError(Exception):
    """So many answers within a minute; `until` says when the next one is taken."""

    def __init__(self, until: datetime) -> None:
        super().__init__(f"Too many answers until {until:%F %T}.")
        self.until = until


def refuse_haste(asked: Asked, *, now: datetime | None = None) -> None:
    """Raises `TooFastError` where the person has given a minute's answers already.

    One that is sent a second time is no further answer. Attempts are in their order whatever
    the clock did; what it dated into the future holds nobody up.
    """
    now = now or timezone.now()
    given = Attempt.objects.filter(person_id=asked.person_id).order_by("-pk")
    most = settings.ANSWERS_A_MINUTE
    for answered_at in given.values_list("answered_at", flat=True)[most - 1 : most]:
        if answered_at <= now < answered_at + MINUTE and not hasattr(asked, "attempt"):
            raise TooFastError(answered_at + MINUTE)
