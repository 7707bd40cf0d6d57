"""What an instructor asks of a cohort, or of some of its people, until when."""

from datetime import datetime
from typing import Self

from django.conf import settings
from django.db import models
from django.urls import reverse
from django.utils import timezone

from course.append_only import AppendOnly, AppendOnlyQuerySet
from course.cohorts.models import Cohort, Person


class AssignmentQuerySet(models.QuerySet["Assignment"]):
    def standing(self) -> Self:
        return self.filter(withdrawn_at=None)

    def of_learner(self, person: Person) -> Self:
        """Those that are meant for somebody: for their whole cohort, or for them by name.

        An archived cohort asks for nothing.
        """
        mine = models.Q(people=None) | models.Q(people=person)
        current = self.filter(mine, cohort__archived_at=None)
        return current.filter(cohort__memberships__person=person).distinct()

    def opened(self, now: datetime) -> Self:
        return self.filter(opens_at__lte=now)

    def soonest_first(self) -> Self:
        return self.order_by("due_at", "pk")


class Assignment(models.Model):
    """A sitting, a lesson or a bench practical.

    Without `people` it is meant for the whole cohort, whoever joins later too. Changing it
    changes no attempt: a sitting keeps what it was begun under (see `Sitting`).
    """

    class What(models.TextChoices):
        DRILLS = "drills", "A sitting of drills"
        LESSON = "lesson", "A lesson"
        PRACTICAL = "practical", "A bench practical"

    cohort = models.ForeignKey(Cohort, models.CASCADE, related_name="assignments")
    what = models.CharField(max_length=20, choices=What)
    title = models.CharField(max_length=120)
    note = models.TextField(blank=True)
    kinds = models.JSONField(default=list, help_text="of drills; empty: any of the skills")
    skills = models.JSONField(default=list, help_text="empty: any")
    questions = models.PositiveSmallIntegerField(null=True)
    right_needed = models.PositiveSmallIntegerField(null=True)
    tries = models.PositiveSmallIntegerField(default=0, help_text="0: as many as they like")
    lesson = models.CharField(max_length=80, blank=True)
    task = models.TextField(blank=True)
    people = models.ManyToManyField(settings.AUTH_USER_MODEL, related_name="assignments")
    opens_at = models.DateTimeField()
    due_at = models.DateTimeField()
    made_by = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.RESTRICT, related_name="assignments_made"
    )
    made_at = models.DateTimeField(default=timezone.now)
    withdrawn_at = models.DateTimeField(null=True)

    objects = AssignmentQuerySet.as_manager()

    class Meta:
        constraints = [
            models.CheckConstraint(
                condition=models.Q(due_at__gt=models.F("opens_at")), name="due_after_it_opens"
            ),
        ]

    def __str__(self) -> str:
        return self.title

    def get_absolute_url(self) -> str:
        return reverse("assignment", args=[self.pk])

    @property
    def is_open(self) -> bool:
        return self.withdrawn_at is None and self.opens_at <= timezone.now()


class Extension(AppendOnly):
    """More time for one person; the last one counts."""

    assignment = models.ForeignKey(Assignment, models.CASCADE, related_name="extensions")
    person = models.ForeignKey(settings.AUTH_USER_MODEL, models.CASCADE, related_name="extensions")
    due_at = models.DateTimeField()
    reason = models.TextField(blank=True)
    by = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.RESTRICT, related_name="extensions_made"
    )
    at = models.DateTimeField(default=timezone.now)

    objects = AppendOnlyQuerySet["Extension"].as_manager()

    def __str__(self) -> str:
        return f"{self.assignment}: {self.person} until {self.due_at:%F %R}"
