"""What was done in a session at the real machines: told by the learner, or seen by others."""

from typing import Any, Self

from django.conf import settings
from django.db import models
from django.utils import timezone

from course.append_only import AppendOnly, AppendOnlyQuerySet
from exercises.models.tokens import new_token
from exercises.worktop.habits import HABITS


class BenchSheetQuerySet(AppendOnlyQuerySet["BenchSheet"]):
    def of(self, person: Any) -> Self:
        """The latest first; what was seen by an instructor is marked `by`."""
        return self.filter(person=person).select_related("by").order_by("-day", "-pk")


class BenchSheet(AppendOnly):
    """A session at the machines. Rows are added, never changed.

    `habits` has true or false for each of HABITS that came up. Filled in by the learner, or `by` an
    instructor who stood there: what was seen leads what was told.
    """

    person = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.CASCADE, related_name="bench_sheets"
    )
    by = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.RESTRICT, related_name="bench_sheets_filled"
    )
    day = models.DateField()
    edits = models.PositiveSmallIntegerField()
    habits = models.JSONField(default=dict)
    wrong = models.TextField("what went wrong", blank=True)
    at = models.DateTimeField(default=timezone.now)
    key = models.CharField("idempotency key", max_length=32, unique=True, default=new_token)

    objects = BenchSheetQuerySet.as_manager()

    def __str__(self) -> str:
        return f"{self.person} at the bench, {self.day:%F}"

    @property
    def is_seen(self) -> bool:
        """Whether an instructor saw it."""
        return self.by_id != self.person_id

    @property
    def kept(self) -> list[str]:
        return [title for slug, title in HABITS.items() if self.habits.get(slug)]

    @property
    def missed(self) -> list[str]:
        return [title for slug, title in HABITS.items() if self.habits.get(slug) is False]
