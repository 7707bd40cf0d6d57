"""The one place that finds a drill for somebody: of the register, or an instructor's own."""

from django.db.models import Q, QuerySet
from django.http import Http404
from django.shortcuts import get_object_or_404

from course.cohorts.models import Person
from exercises.drills.kind import Kind
from exercises.drills.own import is_own
from exercises.drills.register import KINDS
from exercises.models import OwnDrill
from exercises.models.desk import pk_of


def kind_for(person: Person, slug: str) -> Kind:
    """The drill of this slug, or 404: also where it is not published to the person's cohorts."""
    if not is_own(slug):
        return drill_or_404(slug)
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


def drill_or_404(slug: str) -> Kind:
    """A drill of the register."""
    if slug not in KINDS:
        raise Http404("There is no drill of that name.")
    return KINDS[slug]
