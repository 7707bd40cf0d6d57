"""Who changed a bench, or where a cohort works, and when: rows that are only added."""

from typing import TYPE_CHECKING, Self

from django.conf import settings
from django.db import models
from django.utils import timezone

from course.append_only import AppendOnly, AppendOnlyQuerySet
from course.cohorts.benches import Bench

if TYPE_CHECKING:
    from course.cohorts.models import Cohort


class BenchChangeQuerySet(AppendOnlyQuerySet["BenchChange"]):
    def seen_from(self, cohort: "Cohort") -> Self:
        """What was done with the cohort's bench, and with where it works; the latest first."""
        moved = models.Q(cohort=cohort)
        own = models.Q(cohort=None, bench=cohort.bench_id) if cohort.bench_id else moved
        return self.filter(own | moved).select_related("bench", "origin", "by").order_by("-pk")


class BenchChange(AppendOnly):
    """One change. `figures` has those that changed, each with what it was and what it became.

    Without a bench: the usual figures, which are common practice.
    """

    class What(models.TextChoices):
        DESCRIBED = "described", "described"
        CHANGED = "changed", "changed"
        COPIED = "copied", "copied, from `origin`, which others work at too"
        MOVED = "moved", "let `cohort` work at it, and no longer at `origin`"

    what = models.CharField(max_length=20, choices=What)
    bench = models.ForeignKey(Bench, models.RESTRICT, null=True, related_name="changes")
    origin = models.ForeignKey(Bench, models.RESTRICT, null=True, related_name="+")
    cohort = models.ForeignKey(
        "cohorts.Cohort", models.CASCADE, null=True, related_name="bench_changes"
    )
    figures = models.JSONField(default=dict)
    by = models.ForeignKey(settings.AUTH_USER_MODEL, models.RESTRICT, related_name="bench_changes")
    at = models.DateTimeField(default=timezone.now)

    objects = BenchChangeQuerySet.as_manager()

    def __str__(self) -> str:
        return f"{self.bench}, {self.what} {self.at:%F %R}"
