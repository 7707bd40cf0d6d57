"""One question put to one person."""

from typing import Any, Self

from django.conf import settings
from django.db import models
from django.urls import reverse
from django.utils import timezone

from exercises.drills.asks import Json
from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.drills.register import KINDS, kind
from exercises.models.assignment import Assignment
from exercises.models.desk import OwnRevision, kind_now
from exercises.models.sitting import Sitting
from exercises.models.tokens import new_token


def drill_choices() -> list[tuple[str, str]]:
    """A callable, so that a new kind of drill needs no migration."""
    return [(slug, kind.title) for slug, kind in KINDS.items()]


def own_revision() -> "models.ForeignKey[OwnRevision | None, OwnRevision | None]":
    """What an instructor wrote, where it is such a drill: as it was when it was asked."""
    return models.ForeignKey(OwnRevision, models.RESTRICT, null=True, blank=True, related_name="+")


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
    own = own_revision()
    revision = models.PositiveSmallIntegerField()
    seed = models.BigIntegerField()
    question = models.JSONField()
    asked_at = models.DateTimeField(default=timezone.now)
    described = models.BooleanField("in words", default=False)
    latest = models.BooleanField(default=True)
    again = models.OneToOneField(
        "Attempt",
        models.CASCADE,
        null=True,
        blank=True,
        related_name="asked_again",
        help_text="the attempt that was sent back, where this is asked in its stead",
    )
    sitting = models.ForeignKey(
        Sitting, models.SET_NULL, null=True, blank=True, related_name="asked"
    )

    assignment = models.ForeignKey(
        Assignment, models.SET_NULL, null=True, blank=True, related_name="asked"
    )

    objects = AskedQuerySet.as_manager()

    _parsed: tuple[Json, Question] | None = None

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
        """Its kind; an instructor's own drill as it was when this was asked."""
        return self.own.kind if self.own else kind(self.drill)

    def can_be_judged(self) -> bool:
        """Whether what it asks is still asked. One of an own drill may have been put away."""
        if self.own:
            return self.own.is_asked and (self.latest or hasattr(self, "attempt"))
        now = kind_now(self.drill)
        return now is not None and self.revision == now.revision

    def waits(self) -> bool:
        """Whether it waits for an answer that its kind can still judge."""
        return not hasattr(self, "attempt") and self.can_be_judged()

    def page(self) -> str:
        """The address of the page on which it is asked."""
        return (
            reverse("drill", args=[self.drill])
            if not self.assignment_id
            else reverse("assignment", args=[self.assignment_id])
        )

    def as_question(self) -> Question:
        """What is asked; read from its JSON once, as long as that stays the same."""
        if self._parsed is None or self._parsed[0] is not self.question:
            self._parsed = self.question, Question.from_json(self.question)
        return self._parsed[1]
