"""Filling in a bench sheet: one's own, or for a learner whom one sees at the machine."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_http_methods

from course.cohorts.access import (
    SignedInRequest,
    cohort_for,
    instructor_required,
    learner_for,
    sign_in_required,
)
from course.cohorts.models import Person
from course.pages.forms import form_page, posted
from exercises.bench.forms.sheet import BenchSheetForm
from exercises.bench.sheets import keep_sheet
from exercises.forms.fields import refuse_used
from exercises.forms.keys import SentBeforeError

KEPT = "The bench sheet is kept."


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def bench_sheet(request: SignedInRequest) -> HttpResponse:
    form = BenchSheetForm(posted(request))
    if filled_in(request, form, request.user):
        return redirect("bench-practice")
    return form_page(request, "bench/sheet.html", form)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def cohort_bench_sheet(request: SignedInRequest, cohort_pk: int, person_pk: int) -> HttpResponse:
    learner = learner_for(request.user, cohort_pk, person_pk)
    form = BenchSheetForm(posted(request))
    if filled_in(request, form, learner):
        return redirect("cohort-person", cohort_pk, person_pk)
    cohort = cohort_for(request.user, cohort_pk)
    return form_page(request, "bench/sheet.html", form, learner=learner, cohort=cohort)


def filled_in(request: SignedInRequest, form: BenchSheetForm, person: Person) -> bool:
    """Whether it is kept; the form has what is wrong with it, if not."""
    if not form.is_valid():
        return False
    try:
        keep_sheet(request.user, person, form.said())
    except SentBeforeError:
        refuse_used(form)
        return False
    messages.info(request, KEPT)
    return True
