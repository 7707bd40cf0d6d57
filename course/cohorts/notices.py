"""What somebody is told on Today: once, until they have put it away."""

from typing import Self

from django.conf import settings
from django.db import models
from django.utils import timezone


class NoticeQuerySet(models.QuerySet["Notice"]):
    def waiting_for(self, person: object) -> Self:
        return self.filter(person=person, read_at=None)


class Notice(models.Model):
    """A sentence for one person about what was done with their place on the site."""

    person = models.ForeignKey(settings.AUTH_USER_MODEL, models.CASCADE, related_name="notices")
    text = models.TextField()
    at = models.DateTimeField(default=timezone.now)
    read_at = models.DateTimeField(null=True, blank=True)

    objects = NoticeQuerySet.as_manager()

    class Meta:
        ordering = ["pk"]

    def __str__(self) -> str:
        return self.text


def put_away(person: object) -> None:
    """Show none of what waits for the person again."""
    Notice.objects.waiting_for(person).update(read_at=timezone.now())
