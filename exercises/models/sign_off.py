"""A named instructor's decision about who may work at the bench, and its withdrawal."""

import secrets
from typing import Self

from django.conf import settings
from django.db import models
from django.db.models.functions import RowNumber
from django.urls import reverse
from django.utils import timezone

from course.append_only import AppendOnly, AppendOnlyQuerySet
from course.cohorts.models import CODE_LENGTH, CODE_LETTERS, Cohort


def new_card_code() -> str:
    return "".join(secrets.choice(CODE_LETTERS) for _ in range(CODE_LENGTH))


class SignOffQuerySet(AppendOnlyQuerySet["SignOff"]):
    def latest_first(self) -> Self:
        return self.order_by("-pk")

    def latest(self) -> Self:  # type: ignore[override]
        """The last one of each person in each cohort: the only one that counts."""
        back = models.Window(
            RowNumber(),
            partition_by=[models.F("person"), models.F("cohort")],
            order_by=models.F("pk").desc(),
        )
        return self.annotate(back=back).filter(back=1)


class SignOff(AppendOnly):
    """What an instructor decided about a learner on one day, with what they then saw.

    The last one of a person in a cohort counts. When it is withdrawn none does: an earlier
    one does not come back. The bench and all names are as they were that day: whoever changes
    their name afterwards does not get into another's card.
    """

    class State(models.TextChoices):
        SUPERVISED = "supervised", "Ready for the supervised bench"
        ALONE = "alone", "Ready to work alone"
        NOT_YET = "not-yet", "Not ready yet"

    # Not even by mistake does it go with its person: see `exercises/deletion.py`.
    person = models.ForeignKey(settings.AUTH_USER_MODEL, models.RESTRICT, related_name="sign_offs")
    person_name = models.CharField("name as signed", max_length=120)
    cohort = models.ForeignKey(Cohort, models.SET_NULL, null=True, related_name="sign_offs")
    cohort_name = models.CharField(max_length=120)
    instructor = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.RESTRICT, related_name="sign_offs_made"
    )
    instructor_name = models.CharField("signed as", max_length=120)
    bench = models.CharField(max_length=120)
    state = models.CharField(max_length=20, choices=State)
    note = models.TextField(blank=True)
    evidence = models.JSONField()
    at = models.DateTimeField(default=timezone.now)
    code = models.CharField("card code", max_length=12, unique=True, default=new_card_code)
    key = models.CharField("idempotency key", max_length=32, unique=True)

    objects = SignOffQuerySet.as_manager()

    class Meta:
        verbose_name = "sign-off"
        indexes = [
            # Used by SignOffQuerySet.latest, for a cohort's list and a learner's own.
            models.Index(fields=["person", "cohort", "-id"], name="sign_offs_of_person"),
        ]

    def __str__(self) -> str:
        return f"{self.person_name}: {self.get_state_display()}, {self.at:%F}"

    def get_absolute_url(self) -> str:
        return reverse("bench-card", args=[self.code])

    @property
    def spoken_code(self) -> str:
        """The code in two halves, as it stands on the card."""
        half = CODE_LENGTH // 2
        return f"{self.code[:half]}-{self.code[half:]}"

    @property
    def called_now(self) -> str:
        """What the learner is called now, where that is not what was signed."""
        return "" if self.person.name == self.person_name else self.person.name

    @property
    def lets_in(self) -> bool:
        """Whether it lets the learner work at the bench at all, were it the one that counts."""
        return self.state != self.State.NOT_YET

    @property
    def is_withdrawn(self) -> bool:
        return hasattr(self, "withdrawal")


class Withdrawal(AppendOnly):
    """That a sign-off counts no more, by whom and why."""

    sign_off = models.OneToOneField(SignOff, models.CASCADE, related_name="withdrawal")
    by = models.ForeignKey(settings.AUTH_USER_MODEL, models.RESTRICT, related_name="withdrawals")
    at = models.DateTimeField(default=timezone.now)
    reason = models.TextField()

    objects = AppendOnlyQuerySet["Withdrawal"].as_manager()

    def __str__(self) -> str:
        return f"{self.sign_off}, withdrawn {self.at:%F}"
