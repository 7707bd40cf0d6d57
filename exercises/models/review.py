"""What people say about an attempt once it is given, and what it then counts for."""

from typing import Self

from django.conf import settings
from django.db import models
from django.utils import timezone

from course.append_only import AppendOnly, AppendOnlyQuerySet
from exercises.models.tokens import new_token


class ReviewQuerySet(AppendOnlyQuerySet["Review"]):
    def in_order(self) -> Self:
        return self.order_by("pk")

    def unread(self) -> Self:
        """Those that nobody whom they are for has opened yet."""
        return self.filter(read=None)

    def by_instructors(self) -> Self:
        return self.exclude(what=Review.What.REPLY)


class Review(AppendOnly):
    """One thing said about an attempt: by an instructor, or in reply by the learner.

    Rows are added, never changed. Of several scores the last one holds; all are shown.
    """

    class What(models.TextChoices):
        COMMENT = "comment", "Comment"
        SCORE = "score", "Score"
        SENT_BACK = "sent-back", "Sent back"
        REPLY = "reply", "Reply"

    attempt = models.ForeignKey("Attempt", models.CASCADE, related_name="reviews")
    by = models.ForeignKey(settings.AUTH_USER_MODEL, models.RESTRICT, related_name="reviews_made")
    at = models.DateTimeField(default=timezone.now)
    what = models.CharField(max_length=20, choices=What)
    text = models.TextField(blank=True)
    right = models.BooleanField(null=True)
    score = models.PositiveSmallIntegerField(null=True, help_text="in hundredths; 100 is right")
    key = models.CharField("idempotency key", max_length=32, unique=True, default=new_token)

    objects = ReviewQuerySet.as_manager()

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["attempt"],
                condition=models.Q(what="reply"),
                name="one_reply_an_attempt",
            ),
            models.CheckConstraint(
                condition=models.Q(what="score", right__isnull=False, score__isnull=False)
                | (~models.Q(what="score") & models.Q(right=None, score=None)),
                name="a_score_has_a_score",
            ),
        ]

    def __str__(self) -> str:
        return f"{self.get_what_display()} by {self.by}, {self.at:%F}"


class Outcome(models.Model):
    """What an attempt counts for since an instructor scored it: its last score.

    Kept beside the attempt so that whoever counts attempts needs one join. Attempts that
    nobody scored have none: their own verdict holds. Written by `outcomes.settle` alone.
    """

    attempt = models.OneToOneField("Attempt", models.CASCADE, related_name="outcome")
    review = models.OneToOneField(Review, models.CASCADE, related_name="outcome")
    right = models.BooleanField()
    score = models.PositiveSmallIntegerField()

    def __str__(self) -> str:
        return f"{self.attempt}, now {self.score} %"


class ReviewRead(AppendOnly):
    """That it was opened by the learner, or, where it is a reply, by an instructor."""

    review = models.OneToOneField(Review, models.CASCADE, related_name="read")
    at = models.DateTimeField(default=timezone.now)

    objects = AppendOnlyQuerySet["ReviewRead"].as_manager()

    def __str__(self) -> str:
        return f"{self.review}, read {self.at:%F}"
