"""That an instructor asks all others who teach a learner for a link for a new password."""

from datetime import datetime, timedelta
from typing import Self

from django.conf import settings
from django.db import models
from django.utils import timezone

LASTS = timedelta(days=7)


def lasting(now: datetime) -> tuple[datetime, datetime]:
    """When a request that still lasts was made. None lies ahead unless the clock was."""
    return now - LASTS, now + LASTS


class LinkRequestQuerySet(models.QuerySet["LinkRequest"]):
    def open(self, now: datetime | None = None) -> Self:
        """Those that can still be answered, or made use of."""
        return self.filter(ended_at=None, at__range=lasting(now or timezone.now()))

    def passed(self, now: datetime) -> Self:
        """Those whose time is over, and that nobody has ended yet."""
        return self.filter(ended_at=None).exclude(at__range=lasting(now))

    def of_pupils(self, person: object) -> Self:
        """Those of others about somebody whom the person teaches."""
        own = self.filter(for_person__cohorts__instructors=person, for_person__role="learner")
        return own.exclude(asked_by=person).select_related("for_person", "asked_by").distinct()

    def waiting_for(self, person: object) -> Self:
        """Those that the person has to answer."""
        return self.open().of_pupils(person).exclude(agreements__by=person)


class LinkRequest(models.Model):
    """Open until a link is made of it, somebody does not agree, or `LASTS` has passed."""

    class Ending(models.TextChoices):
        MADE = "made", "the link was made"
        REFUSED = "refused", "somebody did not agree"
        PASSED = "passed", "nobody answered in time"

    for_person = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.CASCADE, related_name="link_requests"
    )
    asked_by = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.CASCADE, related_name="link_requests_made"
    )
    at = models.DateTimeField(default=timezone.now)
    ended_at = models.DateTimeField(null=True, blank=True)
    ending = models.CharField(max_length=20, choices=Ending, blank=True)
    refused_by = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.SET_NULL, null=True, blank=True, related_name="+"
    )

    objects = LinkRequestQuerySet.as_manager()

    class Meta:
        ordering = ["pk"]
        constraints = [
            models.UniqueConstraint(
                fields=["for_person", "asked_by"],
                condition=models.Q(ended_at=None),
                name="one_open_link_request",
            ),
        ]

    def __str__(self) -> str:
        return f"for {self.for_person} by {self.asked_by}, {self.at:%F %R}"

    @property
    def is_open(self) -> bool:
        since, until = lasting(timezone.now())
        return self.ended_at is None and since <= self.at <= until

    @property
    def ends(self) -> datetime:
        return self.at + LASTS


class LinkAgreement(models.Model):
    """That one of the others agrees."""

    request = models.ForeignKey(LinkRequest, models.CASCADE, related_name="agreements")
    by = models.ForeignKey(settings.AUTH_USER_MODEL, models.CASCADE, related_name="+")
    at = models.DateTimeField(default=timezone.now)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["request", "by"], name="one_agreement_each"),
        ]

    def __str__(self) -> str:
        return f"{self.by} agrees, {self.at:%F %R}"
