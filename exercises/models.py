"""What was asked of whom, and what they answered."""

import secrets
from typing import Any, Self

from django.conf import settings
from django.db import models
from django.db.models.functions import RowNumber
from django.urls import reverse
from django.utils import timezone

from exercises.drills.kind import Kind, Question, Verdict
from exercises.drills.register import KINDS, kind
from exercises.mastery.skills import SKILLS


def new_token() -> str:
    return secrets.token_urlsafe(16)


def drill_choices() -> list[tuple[str, str]]:
    """A callable, so that a new kind of drill needs no migration."""
    return [(slug, kind.title) for slug, kind in KINDS.items()]


class AskedQuerySet(models.QuerySet["Asked"]):
    def latest_of(self, person: Any, drill: str) -> Self:
        """The question of this drill that was put to the person last: one or none."""
        return self.filter(person=person, drill=drill, latest=True)

    def open(self) -> Self:
        """Those that wait for an answer."""
        return self.filter(latest=True, attempt=None)


class Asked(models.Model):
    """One question, made once from its seed and put to one person.

    `question` holds what was shown and the computed key. It is stored because a later
    revision of the kind may make another question from the same seed.
    """

    token = models.CharField(max_length=32, unique=True, default=new_token)
    person = models.ForeignKey(settings.AUTH_USER_MODEL, models.CASCADE, related_name="asked")
    drill = models.CharField(max_length=50, choices=drill_choices)
    revision = models.PositiveSmallIntegerField()
    seed = models.BigIntegerField()
    question = models.JSONField()
    asked_at = models.DateTimeField(default=timezone.now)
    described = models.BooleanField("in words", default=False)
    latest = models.BooleanField(default=True)

    objects = AskedQuerySet.as_manager()

    class Meta:
        verbose_name = "question asked"
        verbose_name_plural = "questions asked"
        constraints = [
            # At most one question of a drill waits for an answer, also when two are asked for
            # at once. Reloading shows it again: nobody draws until an easy one comes.
            models.UniqueConstraint(
                fields=["person", "drill"],
                condition=models.Q(latest=True),
                name="one_latest_question_a_drill",
            ),
        ]

    def __str__(self) -> str:
        return f"{self.drill} {self.seed} for {self.person}"

    @property
    def kind(self) -> Kind:
        return kind(self.drill)

    @property
    def is_open(self) -> bool:
        """Whether it waits for an answer that its kind can still judge."""
        return self.revision == self.kind.revision and not hasattr(self, "attempt")

    def as_question(self) -> Question:
        return Question.from_json(self.question)


class AttemptQuerySet(models.QuerySet["Attempt"]):
    def of_cohort(self, cohort: Any) -> Self:
        """Attempts of everybody who is in the cohort now."""
        return self.filter(person__memberships__cohort=cohort)

    def latest_first(self) -> Self:
        return self.order_by("-answered_at", "-pk")

    def recent(self, each: int) -> Self:
        """A person's latest attempts at every skill, so many of each."""
        back = models.Window(
            RowNumber(),
            partition_by=[models.F("person"), models.F("skill")],
            order_by=[models.F("answered_at").desc(), models.F("pk").desc()],
        )
        return self.annotate(back=back).filter(back__lte=each)

    def update(self, **fields: Any) -> int:
        raise AppendOnlyError("Attempts are never changed.")

    def delete(self) -> tuple[int, dict[str, int]]:
        raise AppendOnlyError("Attempts are deleted with their person only.")


class AppendOnlyError(TypeError):
    """Somebody tried to change a row that is only ever added."""


class Attempt(models.Model):
    """An answer as it was given and judged. Rows are added, never changed."""

    asked = models.OneToOneField(Asked, models.CASCADE, related_name="attempt")
    person = models.ForeignKey(settings.AUTH_USER_MODEL, models.CASCADE, related_name="attempts")
    drill = models.CharField(max_length=50, choices=drill_choices)
    skill = models.CharField(max_length=50)
    situation = models.CharField(max_length=80)
    seed = models.BigIntegerField()
    revision = models.PositiveSmallIntegerField()
    answer = models.JSONField()
    right = models.BooleanField()
    score = models.PositiveSmallIntegerField(help_text="in hundredths; 100 is right")
    described = models.BooleanField("in words", default=False)
    misconceptions = models.JSONField(default=list)
    feedback = models.JSONField(default=dict)
    asked_at = models.DateTimeField()
    answered_at = models.DateTimeField(default=timezone.now)
    key = models.CharField("idempotency key", max_length=32, unique=True)

    objects = AttemptQuerySet.as_manager()

    class Meta:
        indexes = [
            # Used by scores.of_people and by the learner's record.
            models.Index(fields=["person", "skill", "-answered_at"], name="attempts_of_person"),
        ]

    def __str__(self) -> str:
        return f"{self.person}: {self.drill}, {self.score} %"

    def save(self, *args: Any, **kwargs: Any) -> None:
        if not self._state.adding:
            raise AppendOnlyError("Attempts are never changed.")
        super().save(*args, **kwargs)

    def get_absolute_url(self) -> str:
        return reverse("attempt", args=[self.key])

    @property
    def kind(self) -> Kind:
        return kind(self.drill)

    @property
    def skill_title(self) -> str:
        return SKILLS[self.skill].title

    @property
    def verdict(self) -> Verdict:
        return Verdict(
            right=self.right,
            score=self.score,
            misconceptions=tuple(self.misconceptions),
            feedback=self.feedback,
        )
