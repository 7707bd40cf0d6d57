"""Which bench a cohort works at, what its figures are, and whose figures somebody gets.

A bench may serve cohorts of several instructors. Whoever changes its figures changes them for the
cohorts that they teach, and for no others. Who changed what is kept in the same transaction.
"""

from datetime import datetime
from typing import Any

from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.utils import timezone

from course.cohorts.bench_changes import BenchChange
from course.cohorts.benches import Bench
from course.cohorts.models import Cohort, Person
from exercises.drills.setting.bench_figures import BenchFigures

What = BenchChange.What


def bench_of(person: Person) -> BenchFigures:
    """The figures of the bench that the person's newest cohort works at; one query.

    The newest by joining for a learner, by starting for its instructor. The usual figures
    where that cohort has no bench, or there is no cohort.
    """
    theirs = (
        Cohort.objects.taught_by(person).order_by("-pk")
        if person.is_instructor
        else Cohort.objects.filter(memberships__person=person).order_by("-memberships__pk")
    )
    newest = theirs.select_related("bench").first()
    return newest.bench.as_figures() if newest and newest.bench else BenchFigures.usual()


def set_figures(
    instructor: Person, cohort: Cohort, figures: dict[str, Any], *, now: datetime | None = None
) -> BenchChange | None:
    """Set what the cohort's bench is like; what was changed, or None where nothing was.

    First figures make a bench, for all of the instructor's cohorts that have none yet. Where
    cohorts of others work at the bench too, it stays as it is, and the instructor's own get a copy.
    """
    made = BenchChange(by=instructor, at=now or timezone.now())
    with transaction.atomic():
        own = Cohort.objects.taught_by(instructor).locked()
        here = own_among(own, cohort)
        at_it = [each for each in own if each.bench_id == here.bench_id]
        if here.bench_id is None:
            describe(made, at_it, figures)
        else:
            revise(made, here.bench_id, at_it, figures)
        if made.figures:
            made.save()
    return made if made.figures else None


def describe(made: BenchChange, cohorts: list[Cohort], figures: dict[str, Any]) -> None:
    made.what, made.figures = What.DESCRIBED, differences({}, figures)
    made.bench = new_bench(made.by, cohorts, figures)


def revise(made: BenchChange, pk: int, at_it: list[Cohort], figures: dict[str, Any]) -> None:
    """Change the bench where all the cohorts that work at it are `at_it`, or else a copy."""
    bench = Bench.objects.select_for_update().get(pk=pk)
    before = bench.figures()
    made.figures = differences(before, figures)
    if not made.figures:
        return
    if bench.cohorts.count() == len(at_it):
        made.what, made.bench = What.CHANGED, bench
        Bench.objects.filter(pk=pk).update(**figures)
    else:
        made.what, made.origin = What.COPIED, bench
        made.bench = new_bench(made.by, at_it, before | figures)


def own_among(own: list[Cohort], cohort: Cohort) -> Cohort:
    for each in own:
        if each.pk == cohort.pk:
            return each
    raise PermissionDenied("Only who teaches a cohort says what its bench is like.")


def differences(before: dict[str, Any], after: dict[str, Any]) -> dict[str, list[Any]]:
    """Each figure that is another one now: what it was, and what it becomes."""
    pairs = {name: [before.get(name), value] for name, value in after.items()}
    return {name: pair for name, pair in pairs.items() if plain(pair[0]) != plain(pair[1])}


def plain(value: Any) -> Any:
    """Without what is no difference: the order of meters, the way in which a line ends."""
    if isinstance(value, list):
        return sorted(value)
    return value.splitlines() if isinstance(value, str) else value


def new_bench(instructor: Person, cohorts: list[Cohort], figures: dict[str, Any]) -> Bench:
    bench = Bench.objects.create(**figures, made_by=instructor)
    Cohort.objects.filter(pk__in=[each.pk for each in cohorts]).update(bench=bench)
    return bench


def move_to(instructor: Person, cohort: Cohort, bench: Bench | None) -> bool:
    """Let the cohort work at another bench, or go by the usual figures. False if it did before."""
    with transaction.atomic():
        here = own_among(Cohort.objects.taught_by(instructor).locked(), cohort)
        origin = here.bench
        if origin == bench:
            return False
        here.bench = cohort.bench = bench
        here.save(update_fields=["bench"])
        BenchChange.objects.create(
            what=What.MOVED, bench=bench, origin=origin, cohort=here, by=instructor
        )
    return True


def usual_bench_of(instructor: Person) -> Bench | None:
    """The bench of the instructor's newest cohort that has one: a new cohort takes it."""
    equipped = Cohort.objects.taught_by(instructor).exclude(bench=None)
    newest = equipped.select_related("bench").order_by("-pk").first()
    return newest.bench if newest else None
