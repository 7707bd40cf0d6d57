"""What a learner's attempts come to, kept in step with them."""

from django.conf import settings
from django.db import models


class Summary(models.Model):
    """One row a learner, so that a board of hundreds reads no attempts.

    `skills` has, by skill, what `mastery.states.SkillState` says, as JSON. The columns after it
    are there to sort and filter by. Then comes what the next answer has to know of those before:
    `recent` by skill, the last answers that count, latest first, each as right, score, beliefs;
    `rows` by drill, the right answers without a miss until it was held; `given`, when the answers
    of the last minute were given, latest first.

    Written by `exercises.standing.summaries` alone, in the transaction that adds the attempt or
    the score which changes it; each change raises `version`. `rules` is the `mastery.states.RULES`
    that it goes by; 0 is of before they were numbered, or of nothing yet.
    """

    person = models.OneToOneField(
        settings.AUTH_USER_MODEL, models.CASCADE, related_name="summary", primary_key=True
    )
    skills = models.JSONField(default=dict)
    answers = models.PositiveIntegerField(default=0)
    last_practised = models.DateTimeField(null=True)
    steady = models.PositiveSmallIntegerField(default=0, help_text="skills")
    stuck = models.PositiveSmallIntegerField(default=0, help_text="skills")
    weakest = models.CharField(max_length=50, blank=True, help_text="a skill")
    weakest_score = models.PositiveSmallIntegerField(null=True, help_text="in hundredths")

    recent = models.JSONField(default=dict)
    rows = models.JSONField(default=dict)
    given = models.JSONField(default=list)

    version = models.PositiveIntegerField(default=0)
    rules = models.PositiveSmallIntegerField(default=0)

    class Meta:
        verbose_name_plural = "summaries"

    def __str__(self) -> str:
        return f"{self.person}: {self.answers} answers"
