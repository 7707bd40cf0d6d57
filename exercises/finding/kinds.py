"""The one place that finds a drill for somebody: of the register, or an instructor's own."""

from django.db.models import Q, QuerySet
from django.shortcuts import get_object_or_404
from django.urls import reverse

from course.cohorts.models import Cohort, Person
from exercises.drills.kind import Kind
from exercises.drills.register import KINDS
from exercises.models import OwnDrill
from exercises.models.desk import pk_of


def kind_for(person: Person, slug: str) -> Kind:
    """The drill of this slug, or 404: also where it is not published to the person's cohorts."""
    if slug in KINDS:
        return KINDS[slug]
    return get_object_or_404(own_for(person).select_related("published"), pk=pk_of(slug)).kind


def own_for(person: Person) -> QuerySet[OwnDrill]:
    """The instructors' drills that somebody may be asked; those of their desk may be tried."""
    if person.is_instructor:
        return OwnDrill.objects.at_desk_of(person).live()
    return OwnDrill.objects.for_learner(person)


def own_drill_for(person: Person, pk: int, *, to_change: bool = False) -> OwnDrill:
    """A drill of an instructor's desk, or 404; only its author changes it."""
    found = OwnDrill.objects.at_desk_of(person).with_latest()
    return get_object_or_404(found, Q(made_by=person) if to_change else Q(), pk=pk)


def kinds_for(instructor: Person) -> dict[str, Kind]:
    """All drills whose answers an instructor looks into: the register's, then those of the desk.

    Three queries; own drills by age, retired ones too.
    """
    own = OwnDrill.objects.at_desk_of(instructor).with_latest().order_by("pk")
    return KINDS | {drill.slug: drill.kind for drill in own}


def kinds_to_set(cohort: Cohort) -> dict[str, Kind]:
    """All drills that an assignment can name: the register's, then those published to a cohort."""
    own = OwnDrill.objects.live().filter(cohorts=cohort).select_related("published")
    return KINDS | {drill.slug: drill.kind for drill in own.order_by("pk")}


def page_of(kind: Kind) -> str:
    """Where an instructor finds the drill: on its own page, or at the desk."""
    if kind.own:
        return reverse("own-drill", args=[pk_of(kind.slug)])
    return reverse("drill", args=[kind.slug])
