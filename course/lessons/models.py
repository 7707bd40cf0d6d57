"""How far somebody has read."""

from typing import Any, Self

from django.conf import settings
from django.db import models
from django.utils import timezone


class ReadingQuerySet(models.QuerySet["Reading"]):
    def of(self, person: Any) -> Self:
        return self.filter(person=person)

    def next_turn(self, person: Any) -> int:
        last: int | None = self.of(person).aggregate(last=models.Max("turn"))["last"]
        return (last or 0) + 1


class Reading(models.Model):
    """Somebody and a lesson: the furthest section they came to, and when they had read it all."""

    person = models.ForeignKey(settings.AUTH_USER_MODEL, models.CASCADE, related_name="readings")
    lesson = models.SlugField(max_length=80)
    section = models.SlugField(max_length=80, blank=True)
    reached_at = models.DateTimeField(default=timezone.now)
    turn = models.PositiveIntegerField(
        default=0, help_text="the lesson in which somebody came on last has their highest"
    )
    done_at = models.DateTimeField(null=True, blank=True)

    objects = ReadingQuerySet.as_manager()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["person", "lesson"], name="one_reading_a_lesson"),
        ]

    def __str__(self) -> str:
        return f"{self.person}: {self.lesson}, {self.section or 'the beginning'}"

    @property
    def done(self) -> bool:
        return self.done_at is not None
