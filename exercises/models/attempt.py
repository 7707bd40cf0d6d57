"""An answer as it was given and judged."""

from typing import Any, NamedTuple, Self

from django.conf import settings
from django.db import models
from django.db.models.functions import Coalesce, RowNumber
from django.urls import reverse
from django.utils import timezone

from course.append_only import AppendOnly, AppendOnlyQuerySet
from exercises.drills.kind import Kind, Verdict
from exercises.drills.register import kind
from exercises.mastery.skills import SKILLS
from exercises.models.asked import Asked, drill_choices, own_revision
from exercises.models.review import Review

# What attempts count for, in a query: an instructor may have overruled the verdict.
RIGHT_NOW = Coalesce("outcome__right", "right")
SCORE_NOW = Coalesce("outcome__score", "score")


class Result(NamedTuple):
    """What an attempt counts for today; while it `waits` it counts for nothing."""

    right: bool
    score: int
    waits: bool


def sent_back() -> models.QuerySet[Review]:
    """In a query of attempts, what sent each of them back."""
    return Review.objects.filter(attempt=models.OuterRef("pk"), what=Review.What.SENT_BACK)


class AttemptQuerySet(AppendOnlyQuerySet["Attempt"]):
    def of_cohort(self, cohort: Any) -> Self:
        """Attempts of everybody who is in the cohort now."""
        return self.filter(person__memberships__cohort=cohort)

    def judged(self) -> Self:
        """Those that are right or not; without what waits for an instructor."""
        return self.exclude(pending=True, outcome=None)

    def waiting(self) -> Self:
        """Those that wait for an instructor. What was sent back waits for the learner."""
        return self.filter(~models.Exists(sent_back()), pending=True, outcome=None)

    def with_standing(self) -> Self:
        """Each with what it counts for now, and whether it was `sent_back`."""
        return self.select_related("outcome", "own__drill").annotate(
            sent_back=models.Exists(sent_back())
        )

    def with_again(self) -> Self:
        """Each with whether it was `answered_again`, in its own stead."""
        again = Asked.objects.filter(again=models.OuterRef("pk"), attempt__isnull=False)
        return self.annotate(answered_again=models.Exists(again))

    def listed(self) -> Self:
        """Latest first, with what a list of attempts shows of each."""
        return self.with_standing().latest_first()

    def latest_first(self) -> Self:
        return self.order_by("-pk")

    def recent(self, each: int) -> Self:
        """A person's latest attempts at every skill, so many of each."""
        back = models.Window(
            RowNumber(),
            partition_by=[models.F("person"), models.F("skill")],
            order_by=models.F("pk").desc(),
        )
        return self.annotate(back=back).filter(back__lte=each)


class Attempt(AppendOnly):
    """An answer as it was given and judged. Rows are added, never changed."""

    asked = models.OneToOneField(Asked, models.CASCADE, related_name="attempt")
    person = models.ForeignKey(settings.AUTH_USER_MODEL, models.CASCADE, related_name="attempts")
    drill = models.CharField(max_length=50, choices=drill_choices)
    own = own_revision()
    skill = models.CharField(max_length=50)
    situation = models.CharField(max_length=80)
    seed = models.BigIntegerField()
    revision = models.PositiveSmallIntegerField()
    answer = models.JSONField()
    right = models.BooleanField()
    score = models.PositiveSmallIntegerField(help_text="in hundredths; 100 is right")
    described = models.BooleanField("in words", default=False)
    pending = models.BooleanField("waits for an instructor", default=False)
    misconceptions = models.JSONField(default=list)
    feedback = models.JSONField(default=dict)
    asked_at = models.DateTimeField()
    answered_at = models.DateTimeField(default=timezone.now)
    key = models.CharField("idempotency key", max_length=32, unique=True)

    objects = AttemptQuerySet.as_manager()

    # How far the drill's row had come before this answer, for whoever has only now taken it.
    row_before: int | None = None

    class Meta:
        indexes = [
            # Used by scores.of_people and by the learner's record.
            models.Index(fields=["person", "skill", "-id"], name="attempts_of_person"),
            # Used wherever somebody's last answers are read, of whatever skill.
            models.Index(fields=["person", "-id"], name="attempts_in_order"),
        ]

    def __str__(self) -> str:
        return f"{self.person}: {self.drill}, {self.score} %"

    def get_absolute_url(self) -> str:
        return reverse("attempt", args=[self.key])

    @property
    def kind(self) -> Kind:
        """Its kind; an instructor's own drill as it was when it was answered."""
        return self.own.kind if self.own else kind(self.drill)

    @property
    def skill_title(self) -> str:
        return SKILLS[self.skill].title

    @property
    def situation_title(self) -> str:
        """The situation's name, in words."""
        return self.situation.replace("-", " ").capitalize()

    @property
    def result(self) -> Result:
        """What it counts for, by the last score that an instructor gave or by its verdict."""
        if hasattr(self, "outcome"):
            return Result(self.outcome.right, self.outcome.score, waits=False)
        return Result(self.right, self.score, waits=self.pending)

    def remember_no_outcome(self) -> None:
        """Spare the query for it: nobody can have scored what was answered only now."""
        Attempt._meta.get_field("outcome").set_cached_value(self, None)

    @property
    def seconds_taken(self) -> float | None:
        """From the question to the answer; None where the clock was set back between them."""
        seconds = (self.answered_at - self.asked_at).total_seconds()
        return seconds if seconds >= 0 else None

    @property
    def verdict(self) -> Verdict:
        return Verdict(
            right=self.right,
            score=self.score,
            misconceptions=tuple(self.misconceptions),
            pending=self.pending,
            feedback=self.feedback,
        )
