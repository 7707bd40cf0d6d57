"""The figures of the bench that a cohort works at."""

from typing import Any

from django.contrib import messages
from django.db.models import Prefetch
from django.forms import model_to_dict
from django.http import HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_http_methods

from course.cohorts.access import SignedInRequest, cohort_for, instructor_required
from course.cohorts.bench_changes import BenchChange
from course.cohorts.bench_form import BenchChoiceForm, BenchForm
from course.cohorts.bench_words import changed_words
from course.cohorts.benches import FIGURES, Bench, BenchQuerySet, usual_bench
from course.cohorts.equipping import move_to, set_figures
from course.cohorts.models import Cohort, Person
from course.pages.forms import form_page, posted

What = BenchChange.What


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def bench_figures(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    form = BenchForm(posted(request), initial=model_to_dict(cohort.bench or usual_bench()))
    if form.is_valid():
        messages.success(request, told(set_figures(request.user, cohort, form.cleaned_data)))
        return redirect("bench-figures", cohort.pk)
    return bench_page(request, cohort, form)


def told(made: BenchChange | None) -> str:
    if made is None:
        return "Nothing was changed."
    copied = " is a bench of your cohorts’ own now" if made.what == What.COPIED else ""
    return f"{made.bench}{copied}: lessons, drills and checklists use these figures."


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def bench_choice(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    """Let the cohort work at another of the instructor's benches."""
    cohort = cohort_for(request.user, cohort_pk)
    form = BenchChoiceForm(posted(request), benches=benches_of(request.user))
    if form.is_valid():
        move_to(request.user, cohort, form.cleaned_data["bench"])
        messages.success(request, f"{cohort} goes by {cohort.bench or 'the usual figures'} now.")
    elif form.is_bound:
        messages.error(request, "You look after no such bench. Choose one of the list.")
    return redirect("bench-figures", cohort.pk)


def benches_of(person: Person) -> BenchQuerySet:
    """Those that the person may choose, each with `theirs`: the cohorts of theirs that have it."""
    theirs = Prefetch("cohorts", Cohort.objects.taught_by(person), to_attr="theirs")
    return Bench.objects.of_instructor(person).prefetch_related(theirs)


def bench_page(request: SignedInRequest, cohort: Cohort, form: BenchForm) -> HttpResponse:
    benches = benches_of(request.user)
    return form_page(
        request,
        "cohorts/bench.html",
        form,
        cohort=cohort,
        choice=BenchChoiceForm(benches=benches, initial={"bench": cohort.bench}),
        benches=list(benches),
        changes=[(change, lines_of(change)) for change in BenchChange.objects.seen_from(cohort)],
        **company(request.user, cohort),
    )


def company(person: Person, cohort: Cohort) -> dict[str, Any]:
    """Who else works at the cohort's bench: the person's own cohorts, and who teaches others."""
    if cohort.bench is None:
        return {}
    at_it = cohort.bench.cohorts.exclude(pk=cohort.pk)
    own = at_it.filter(instructors=person)
    others = at_it.exclude(pk__in=own)
    return {
        "own": list(own),
        "others": others.exists(),
        "their_instructors": Person.objects.filter(taught_cohorts__in=others).distinct(),
    }


def lines_of(change: BenchChange) -> list[str]:
    """What changed, figure by figure; a first description is not told again."""
    if change.what == What.DESCRIBED:
        return []
    # In the order of the form: a database may keep them in another.
    found = [figure for figure in FIGURES if figure in change.figures]
    return [changed_words(figure, *change.figures[figure]) for figure in found]
