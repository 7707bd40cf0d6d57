"""A roster that was sent and looked through, and waits for the word to write it."""

import secrets
from datetime import datetime, timedelta

from django.conf import settings
from django.db import models
from django.db.models import Q
from django.utils import timezone

WAITS = timedelta(days=1)


def new_token() -> str:
    return secrets.token_urlsafe(16)


class RosterUpload(models.Model):
    """`text` is the file; once written it is emptied, and `made` has who is new.

    `cohort` is where people go whose line names none; without it every line must.
    """

    token = models.CharField(max_length=32, unique=True, default=new_token)
    person = models.ForeignKey(settings.AUTH_USER_MODEL, models.CASCADE, related_name="rosters")
    cohort = models.ForeignKey("cohorts.Cohort", models.CASCADE, null=True, related_name="rosters")
    text = models.TextField(blank=True)
    made = models.JSONField(default=list)
    counts = models.JSONField(default=dict)
    at = models.DateTimeField(default=timezone.now)
    written_at = models.DateTimeField(null=True, blank=True)

    def __str__(self) -> str:
        return f"roster of {self.at:%F %R}"


def purge(now: datetime) -> None:
    """Delete those never written after a day, and written ones when their links have ended.

    What is dated further into the future than that was sent while the clock was ahead.
    """
    links = timedelta(seconds=settings.PASSWORD_RESET_TIMEOUT)
    waits = Q(written_at=None, at__gt=now - WAITS, at__lte=now + WAITS)
    useful = Q(written_at__gt=now - links, written_at__lte=now + links)
    RosterUpload.objects.exclude(waits | useful).delete()
