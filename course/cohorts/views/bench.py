"""The figures of the bench that a cohort works at."""

from django.contrib import messages
from django.forms import model_to_dict
from django.http import HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_http_methods

from course.cohorts.access import SignedInRequest, cohort_for, instructor_required
from course.cohorts.bench_form import BenchChoiceForm, BenchForm
from course.cohorts.benches import Bench, usual_bench
from course.cohorts.equipping import move_to, set_figures
from course.cohorts.models import Cohort
from course.cohorts.views.pages import form_page, posted


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def bench_figures(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    form = BenchForm(posted(request), initial=model_to_dict(cohort.bench or usual_bench()))
    if form.is_valid():
        bench = set_figures(request.user, cohort, form.cleaned_data)
        messages.success(request, f"{bench}: lessons, drills and checklists use these figures.")
        return redirect("bench-figures", cohort.pk)
    return bench_page(request, cohort, form)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def bench_choice(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    """Let the cohort work at another of the instructor's benches."""
    cohort = cohort_for(request.user, cohort_pk)
    form = BenchChoiceForm(posted(request), benches=Bench.objects.of_instructor(request.user))
    if form.is_valid():
        move_to(cohort, form.cleaned_data["bench"])
        messages.success(request, f"{cohort} goes by {cohort.bench or 'the usual figures'} now.")
    elif form.is_bound:
        messages.error(request, "You look after no such bench. Choose one of the list.")
    return redirect("bench-figures", cohort.pk)


def bench_page(request: SignedInRequest, cohort: Cohort, form: BenchForm) -> HttpResponse:
    bench, benches = cohort.bench, Bench.objects.of_instructor(request.user)
    own = Cohort.objects.taught_by(request.user).exclude(pk=cohort.pk)
    return form_page(
        request,
        "cohorts/bench.html",
        form,
        cohort=cohort,
        shared_with=list(own.filter(bench=bench)) if bench else [],
        choice=BenchChoiceForm(benches=benches, initial={"bench": bench}),
        benches=list(benches),
    )
