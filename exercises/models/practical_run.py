"""Somebody at the practice bench: a run of a practical, and each action of their hands."""

from typing import Self

from django.conf import settings
from django.db import models
from django.urls import reverse
from django.utils import timezone

from course.append_only import AppendOnly, AppendOnlyQuerySet
from exercises.drills.asks import Json
from exercises.models.tokens import new_token
from exercises.worktop.practical import Practical, Way
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import practicals
from exercises.worktop.worktop import Worktop


def way_choices() -> list[tuple[str, str]]:
    """A callable, so that a new way needs no migration."""
    return [(way.value, way.value) for way in Way]


class PracticalRunQuerySet(models.QuerySet["PracticalRun"]):
    def open_of(self, person: object, practical: str) -> Self:
        """The one that goes on: one or none."""
        return self.filter(person=person, practical=practical, ended_at=None)

    def latest_first(self) -> Self:
        return self.order_by("-pk")


class PracticalRun(models.Model):
    """`set_up` is what lay ready; `state` what the actions have come to, after `done` of them.

    `state` is kept so that many actions open as fast as few: it is always what a replay of the
    actions gives, and changes only in the transaction that adds one. A run ends when it is handed
    in, with its `debrief`, or when its practical is begun again.
    """

    token = models.CharField(max_length=32, unique=True, default=new_token)
    person = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.CASCADE, related_name="practical_runs"
    )
    practical = models.CharField(max_length=80)
    way = models.CharField(max_length=20, choices=way_choices)
    set_up = models.JSONField()
    state = models.JSONField()
    done = models.PositiveIntegerField(default=0)
    begun_at = models.DateTimeField(default=timezone.now)
    ended_at = models.DateTimeField(null=True, blank=True)
    handed_in = models.BooleanField(default=False)
    debrief = models.JSONField(null=True, blank=True)
    right = models.BooleanField(null=True)
    score = models.PositiveSmallIntegerField(null=True, help_text="in hundredths; 100 is right")

    objects = PracticalRunQuerySet.as_manager()

    _stands: tuple[Json, Worktop] | None = None

    class Meta:
        verbose_name = "run of a practical"
        verbose_name_plural = "runs of practicals"
        constraints = [
            # Beginning twice, in parallel too, gives one run.
            models.UniqueConstraint(
                fields=["person", "practical"],
                condition=models.Q(ended_at=None),
                name="one_open_run_a_practical",
            ),
        ]
        indexes = [
            # Used by the list of practicals and by the learner's record.
            models.Index(fields=["person", "practical", "-id"], name="runs_of_person"),
        ]

    def __str__(self) -> str:
        return f"{self.practical} by {self.person}, {self.done} actions"

    def get_absolute_url(self) -> str:
        return reverse("bench-debrief" if self.handed_in else "bench-run", args=[self.token])

    @property
    def is_open(self) -> bool:
        return self.ended_at is None

    @property
    def content(self) -> Practical | None:
        """The practical as its file has it today; None where there is no such file any more."""
        return practicals().get(self.practical)

    @property
    def title(self) -> str:
        """As the practical is called; by its slug, where it is no more."""
        return self.content.title if self.content else self.practical

    @property
    def worktop(self) -> Worktop:
        """How the bench stands; worked out once, as long as the state stays the same."""
        if self._stands is None or self._stands[0] is not self.state:
            set_up = self._stands[1].set_up if self._stands else SetUp.from_json(self.set_up)
            self._stands = self.state, Worktop.from_json(set_up, self.state)
        return self._stands[1]

    def put(self, top: Worktop) -> None:
        """The bench stands so now; not saved yet."""
        self.state, self.done = top.as_json(), top.done
        self._stands = self.state, top


class BenchAction(AppendOnly):
    """One thing that hands did: rows are added, never changed.

    `number` counts from 1; the database takes each once, so that two pages can't fork a tape.
    `clock` is that of the machines afterwards, in frames.
    """

    run = models.ForeignKey(PracticalRun, models.CASCADE, related_name="actions")
    number = models.PositiveIntegerField()
    name = models.CharField(max_length=40)
    arguments = models.JSONField(default=dict)
    told = models.TextField()
    sign = models.CharField(max_length=40, blank=True)
    clock = models.PositiveIntegerField()
    at = models.DateTimeField(default=timezone.now)

    objects = AppendOnlyQuerySet["BenchAction"].as_manager()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["run", "number"], name="one_action_a_number"),
        ]

    def __str__(self) -> str:
        return f"{self.number}. {self.told}"
