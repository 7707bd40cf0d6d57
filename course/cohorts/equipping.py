"""Which bench a cohort works at, what its figures are, and whose figures somebody gets."""

from typing import Any

from django.db import transaction

from course.cohorts.benches import Bench
from course.cohorts.models import Cohort, Person
from exercises.drills.bench_figures import BenchFigures


def bench_of(person: Person) -> BenchFigures:
    """The figures of the bench that the person's newest cohort works at; one query.

    The newest by joining for a learner, by starting for its instructor. The usual figures
    where that cohort has no bench, or there is no cohort.
    """
    theirs = (
        Cohort.objects.taught_by(person).order_by("-started_at", "-pk")
        if person.is_instructor
        else Cohort.objects.filter(memberships__person=person).order_by(
            "-memberships__joined_at", "-memberships__pk"
        )
    )
    newest = theirs.select_related("bench").first()
    return newest.bench.as_figures() if newest and newest.bench else BenchFigures.usual()


def set_figures(instructor: Person, cohort: Cohort, figures: dict[str, Any]) -> Bench:
    """Set what the cohort's bench is like; its first figures make the bench.

    A new bench serves all of the instructor's cohorts that have none yet.
    """
    with transaction.atomic():
        locked = Cohort.objects.select_for_update().get(pk=cohort.pk)
        if locked.bench is None:
            bench = Bench.objects.create(**figures, made_by=instructor)
            own = Cohort.objects.taught_by(instructor).filter(bench=None)
            Cohort.objects.filter(pk__in=list(own.values_list("pk", flat=True))).update(bench=bench)
            return bench
        for name, value in figures.items():
            setattr(locked.bench, name, value)
        locked.bench.save()
        return locked.bench


def move_to(cohort: Cohort, bench: Bench | None) -> None:
    """Let the cohort work at another bench, or go by the usual figures."""
    cohort.bench = bench
    cohort.save(update_fields=["bench"])


def usual_bench_of(instructor: Person) -> Bench | None:
    """The bench of the instructor's newest cohort that has one: a new cohort takes it."""
    equipped = Cohort.objects.taught_by(instructor).exclude(bench=None)
    newest = equipped.select_related("bench").order_by("-started_at", "-pk").first()
    return newest.bench if newest else None
