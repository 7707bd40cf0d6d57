"""Several questions that somebody answers in one go."""

from typing import Self

from django.conf import settings
from django.db import models
from django.urls import reverse
from django.utils import timezone

from exercises.mastery.skills import SKILLS
from exercises.models.assignment import Assignment
from exercises.models.tokens import new_token


class SittingQuerySet(models.QuerySet["Sitting"]):
    def open_of(self, person: object) -> Self:
        """The one that the person has not ended: one or none."""
        return self.filter(person=person, ended_at=None)

    def latest_first(self) -> Self:
        return self.order_by("-pk")


class Sitting(models.Model):
    """`length` questions on some skills, or on any where `skills` is empty; likewise `kinds`.

    It ends when all are answered, or when the learner stops. `answered` counts the answers; one
    that was sent back and answered again counts twice.
    """

    token = models.CharField(max_length=32, unique=True, default=new_token)
    person = models.ForeignKey(settings.AUTH_USER_MODEL, models.CASCADE, related_name="sittings")
    skills = models.JSONField(default=list)
    kinds = models.JSONField(default=list)
    assignment = models.ForeignKey(
        Assignment, models.SET_NULL, null=True, blank=True, related_name="sittings"
    )
    right_needed = models.PositiveSmallIntegerField(
        null=True, help_text="as the assignment asked when the sitting was begun"
    )
    length = models.PositiveSmallIntegerField()
    answered = models.PositiveSmallIntegerField(default=0)
    started_at = models.DateTimeField(default=timezone.now)
    ended_at = models.DateTimeField(null=True, blank=True)

    objects = SittingQuerySet.as_manager()

    class Meta:
        constraints = [
            # Starting twice, in parallel too, gives one sitting.
            models.UniqueConstraint(
                fields=["person"],
                condition=models.Q(ended_at=None),
                name="one_open_sitting",
            ),
        ]

    def __str__(self) -> str:
        return f"{self.length} questions for {self.person}"

    def get_absolute_url(self) -> str:
        return reverse("sitting", args=[self.token])

    @property
    def is_open(self) -> bool:
        return self.ended_at is None

    @property
    def left(self) -> int:
        """How many of its questions are still to be answered."""
        return max(0, self.length - self.answered)

    @property
    def skill_titles(self) -> list[str]:
        return [SKILLS[slug].title for slug in self.skills if slug in SKILLS]
