"""Items: what a cohort's answers say about the drills."""

from django.db.models import QuerySet
from django.http import Http404, HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from course.cohorts.access import (
    SignedInRequest,
    cohort_for,
    instructor_required,
    learners_taught_by,
)
from course.cohorts.models import Cohort, Person
from exercises.finding.kinds import kinds_for, page_of
from exercises.items.forms import SORTS, ItemsForm
from exercises.items.reads import fixed_set, given_by, kind_lines, situation_lines
from exercises.items.wrong_answers import wrong_answers
from exercises.mastery.items import ENOUGH


@require_safe
@instructor_required
def items(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    kinds = kinds_for(request.user)
    form = ItemsForm(request.GET, kinds)
    given = given_by(people_of(request, cohort, form), kinds)
    context = {
        "cohort": cohort,
        "lines": form.sorted(kind_lines(given, kinds)),
        "fixed": fixed_set(given, form.chosen["set"], kinds),
        "enough": ENOUGH,
        "sorts": SORTS.items(),
        **form.chosen,
    }
    return render(request, "items/items.html", context)


@require_safe
@instructor_required
def items_of_kind(request: SignedInRequest, cohort_pk: int, slug: str) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    kinds = kinds_for(request.user)
    if slug not in kinds:
        raise Http404("There is no drill of that name.")
    kind, form = kinds[slug], ItemsForm(request.GET, kinds)
    people = people_of(request, cohort, form)
    lines = situation_lines(kind, given_by(people, kinds), wrong_answers(kind, people))
    context = {
        "cohort": cohort,
        "kind": kind,
        "page": page_of(kind),
        "lines": form.sorted(lines),
        "enough": ENOUGH,
        "sorts": SORTS.items(),
        **form.chosen,
    }
    return render(request, "items/kind.html", context)


def people_of(request: SignedInRequest, cohort: Cohort, form: ItemsForm) -> QuerySet[Person]:
    """Whose answers count: those of the cohort, or of everybody whom the instructor teaches."""
    if form.chosen["of"] == "all":
        return learners_taught_by(request.user)
    return Person.objects.learning_in(cohort)
