"""Benches: the figures of two machines that an instructor looks after."""

from typing import TYPE_CHECKING, Any, Self

from django.conf import settings
from django.db import models

from exercises.drills.setting.bench_figures import BenchFigures
from exercises.drills.setting.settings import Meter, Settings
from exercises.tape import Bench as Machines
from exercises.tape import Rate

if TYPE_CHECKING:
    from course.cohorts.models import Person


class BenchQuerySet(models.QuerySet["Bench"]):
    def of_instructor(self, person: "Person") -> Self:
        """Those that a cohort taught by the person works at, and those that they described."""
        own = models.Q(cohorts__instructors=person) | models.Q(made_by=person)
        return self.filter(own).distinct()


class Bench(models.Model):
    """What an instructor says of a bench. Whole seconds, or frames where machines count them."""

    class LineSystem(models.TextChoices):
        L625 = "625", "625 lines, 25 frames a second"
        L525 = "525", "525 lines, 29.97 frames a second"

    name = models.CharField(max_length=120)
    line_system = models.CharField(max_length=3, choices=LineSystem, default=LineSystem.L625)
    drop_frame = models.BooleanField("drop-frame time code", default=False)
    pre_roll = models.PositiveSmallIntegerField("pre-roll", help_text="in seconds")
    source_run_up = models.PositiveSmallIntegerField("run-up", help_text="in seconds")
    lock = models.PositiveSmallIntegerField(help_text="in frames")
    relock = models.PositiveSmallIntegerField(help_text="in frames")
    erase_gap = models.PositiveSmallIntegerField(help_text="in frames")
    meters = models.JSONField(default=list)
    local_rules = models.TextField(blank=True)
    who_to_ask = models.CharField(max_length=200, blank=True)
    made_by = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.SET_NULL, null=True, related_name="benches"
    )

    objects = BenchQuerySet.as_manager()

    class Meta:
        verbose_name_plural = "benches"
        ordering = ["name", "pk"]

    def __str__(self) -> str:
        return self.name

    @property
    def rate(self) -> Rate:
        return RATES[self.line_system]

    def figures(self) -> dict[str, Any]:
        """What an instructor says of it, by name."""
        return {name: getattr(self, name) for name in FIGURES}

    def as_settings(self) -> Settings:
        second = self.rate.nominal
        return Settings(
            bench=Machines(
                self.rate,
                lock=self.lock,
                relock=self.relock,
                erase_gap=self.erase_gap,
                drop_frame=self.drop_frame,
            ),
            pre_roll=self.pre_roll * second,
            source_run_up=self.source_run_up * second,
            meters=frozenset(map(Meter, self.meters)),
        )

    def as_figures(self) -> BenchFigures:
        return BenchFigures(
            settings=self.as_settings(),
            name=self.name,
            local_rules=self.local_rules,
            who_to_ask=self.who_to_ask,
        )


FIGURES = (
    "name",
    "line_system",
    "drop_frame",
    "pre_roll",
    "source_run_up",
    "lock",
    "relock",
    "erase_gap",
    "meters",
    "who_to_ask",
    "local_rules",
)
RATES = {Bench.LineSystem.L625.value: Rate.R25, Bench.LineSystem.L525.value: Rate.R29_97}


def usual_bench() -> Bench:
    """The usual figures as a bench that is not stored, for an instructor to start from."""
    usual = Settings.usual()
    second = usual.bench.rate.nominal
    return Bench(
        name="",
        pre_roll=usual.pre_roll // second,
        source_run_up=usual.source_run_up // second,
        lock=usual.bench.lock,
        relock=usual.bench.relock,
        erase_gap=usual.bench.erase_gap,
        meters=sorted(usual.meters),
    )
